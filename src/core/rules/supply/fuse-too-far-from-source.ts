import type { BoatIndex } from '../../boat/boat-index.ts';
import { lengthMm } from '../../boat/measure.ts';
import type { Protection } from '../../boat/supply.ts';
import { type FusePlaceRow, fusePlaceRow } from '../../facts/fuse-places.ts';
import type { MainEntry } from '../../panels-shape.ts';
import type { LaidPlan } from '../../plan-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { sourceWords } from '../rule-words.ts';
import { millimetres } from './supply-words.ts';

/** A main that is the first thing on its wire. */
interface FirstMain {
  readonly about: readonly string[];
  readonly name: string;
  readonly source: string;
  readonly entry: MainEntry;
  readonly main: Protection | undefined;
  readonly fromBattery: boolean;
}

const hasOwn = ({ kind }: MainEntry): boolean => kind === 'fuse' || kind === 'breaker';

const bankMains = (index: BoatIndex, { banks }: LaidPlan): FirstMain[] =>
  banks
    .filter(({ main }) => hasOwn(main))
    .map(({ bank, main }) => ({
      about: [bank],
      name: `the main of the bank ${bank}`,
      source: 'the battery',
      entry: main,
      main: index.banks.get(bank)?.main,
      fromBattery: true,
    }));

/** Mains of panels that nothing stands before. */
const panelMains = (index: BoatIndex, { panels }: LaidPlan): FirstMain[] =>
  panels
    .filter(({ guardBy, main }) => guardBy === 'panel-main' && main.kind !== 'none')
    .map(({ panel, from, main }) => ({
      about: [panel, from],
      name: `the main of the panel ${panel}`,
      source: index.banks.has(from) ? 'the battery' : from,
      entry: main,
      main: index.panels.get(panel)?.main,
      fromBattery: index.banks.has(from),
    }));

const cure = 'Move it to the battery, or fit another there; until then lead the wire up to it in conduit all the way.';

/** The rule that a place is held against, and the laxer wording that the trade has for a sheathed wire from a battery. */
const rowsFor = ({ main, fromBattery }: FirstMain): { row: FusePlaceRow; laxer?: FusePlaceRow } => {
  if (main?.sheathed !== true) return { row: fusePlaceRow('project') };
  const row = fusePlaceRow('cfr-sheathed');
  return fromBattery ? { row, laxer: fusePlaceRow('trade-battery') } : { row };
};

const levelOf = (first: FirstMain, longestMm: number): 'fault' | 'doubt' => {
  const { row, laxer } = rowsFor(first);
  const nominalMm = first.main?.distance === undefined ? longestMm : lengthMm(first.main.distance).nominalMm;
  const isOnlyDoubt = nominalMm <= row.mostMm;
  return isOnlyDoubt || longestMm <= (laxer?.mostMm ?? 0) ? 'doubt' : 'fault';
};

const tooFar = (first: FirstMain): Observation[] => {
  const { about, name, source, entry } = first;
  if (entry.farMm === undefined) {
    return [
      {
        about,
        level: 'doubt',
        says: `Nobody has written how far along the wire ${name} sits from ${source}. The wire up to it has no protection.`,
        cure: 'Measure along the wire and enter the distance.',
      },
    ];
  }
  const { row } = rowsFor(first);
  if (entry.farMm <= row.mostMm) return [];
  return [
    {
      about,
      level: levelOf(first, entry.farMm),
      says: `${name} sits ${millimetres(entry.farMm)} along the wire from ${source}; ${millimetres(row.mostMm)} are allowed ${entry.sheathed === true ? 'in conduit all the way' : 'for a wire in the open'}. Up to there nothing protects the wire.`,
      measured: { value: entry.farMm, unit: 'mm' },
      limit: { value: row.mostMm, unit: 'mm', source: sourceWords(row.source) },
      cure,
    },
  ];
};

/** What lies between the source and the fuse is protected by nothing. */
export const fuseTooFarFromSource: Rule = {
  id: 'supply/fuse-too-far-from-source',
  level: 'fault',
  title: 'A main fuse sits too far from its source.',
  sources: ['choice-fuse-place', 'cfr-33-183-455', 'memory-fuse-places'],
  check: ({ index, plan }) => [...bankMains(index, plan), ...panelMains(index, plan)].flatMap(tooFar),
};
