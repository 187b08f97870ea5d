import type { Kit } from '../../core/boat/boat-schema.ts';
import { lastPhase } from '../../core/boat/phase.ts';
import type { Sheet } from '../../core/boat/sheet.ts';
import type { ReadingId } from '../../core/facts/reading-ids.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import type { Plan, ReadingEntry, SeenEntry } from '../../core/plan-shape.ts';
import { antennaSays, asSentences, radarSays } from '../antennas/aerial-words.ts';
import { printCount } from '../lists/print-figure.ts';
import type { CardBoat } from './card-boat.ts';
import { everyWords } from './form-words.ts';
import { needWords } from './need-words.ts';
import { type TeeOfUnit, teesOfUnit } from './tees-of-unit.ts';
import { unitDraws } from './unit-draws.ts';
import { type PlugCard, unitPlugs } from './unit-plugs.ts';
import { type PortTalk, unitTalk } from './unit-talk.ts';

/** One reading a unit is asked to show or to use. */
export interface WantedReading {
  readonly reading: ReadingId;
  readonly instance?: number;
  readonly name: string;
  readonly fact: string;
  readonly arrives: boolean;
}

/** Everything there is to say of one unit, in words. */
export interface UnitCard {
  readonly id: string;
  readonly name: string;
  /** the kind of unit, as its sheet names it */
  readonly kind?: string;
  /** fate, phase and place: "comes aboard in phase 2; helm dash" */
  readonly stands: string;
  readonly rests: readonly string[];
  readonly says: readonly PortTalk[];
  readonly hears: readonly PortTalk[];
  readonly wants: readonly WantedReading[];
  readonly draws: readonly string[];
  /** of an antenna or a radar: how far it reaches, what arrives at it, what it does not see */
  readonly reaches: readonly string[];
  /** the tees its ports hang on, and why each is where it is */
  readonly tees: readonly TeeOfUnit[];
  readonly plugs: readonly PlugCard[];
  readonly before: readonly string[];
}

const fateWords = { stays: 'stays aboard', goes: 'goes ashore', comes: 'comes aboard' };

const standsWords = (index: CardBoat, unit: Kit): string => {
  const phase = unit.fate === 'stays' || lastPhase(index.boat) === 1 ? '' : ` in phase ${unit.phase ?? 1}`;
  return `${fateWords[unit.fate]}${phase}; ${index.places.get(unit.place)?.name ?? unit.place}`;
};

const sourceWords = {
  typical: 'Typical of its kind: check the maker’s sheet.',
  manual: 'From the maker’s own manual.',
  recording: 'From a recording of this very bus.',
};

const howWords = { manual: 'the manual', recording: 'a recording', seen: 'what was seen aboard' };

const restsWords = (unit: Kit, sheet: Sheet): string[] => {
  const changes = unit.changes ?? [];
  const hows = [...new Set(changes.map(({ how }) => howWords[how]))];
  return [
    sourceWords[sheet.source],
    ...(sheet.source !== 'typical' && sheet.sourceNote !== undefined ? [sheet.sourceNote] : []),
    ...(changes.length === 0
      ? []
      : [`${printCount(changes.length, 'entry', 'entries')} changed for this unit, by ${hows.join(' and by ')}.`]),
  ];
};

/** What the need asks of the reading; two needs for one reading at one unit both count. */
const askedWords = ({ boat }: CardBoat, entry: ReadingEntry): string[] =>
  boat.needs
    .filter(
      (need) =>
        need.at === entry.at &&
        need.reading === entry.reading &&
        need.instance === entry.instance &&
        need.must === entry.must,
    )
    .flatMap(({ everyMs, reference, withOffset }) => [
      ...(everyMs === undefined ? [] : [`wanted ${everyWords(everyMs)}`]),
      ...(reference === undefined ? [] : [`as ${reference}`]),
      ...(withOffset === true ? ['with its offset'] : []),
    ]);

const wantsOf = (index: CardBoat, plan: Plan, unit: Kit): WantedReading[] =>
  plan.readings
    .filter((entry) => entry.at === unit.id)
    .sort((a, b) => Number(a.arrives) - Number(b.arrives))
    .map((entry) => ({
      reading: entry.reading,
      ...(entry.instance === undefined ? {} : { instance: entry.instance }),
      name: readingName(entry),
      fact: [
        ...new Set([...askedWords(index, entry), ...(entry.must ? [] : ['may be missing']), needWords(entry)]),
      ].join(', '),
      arrives: entry.arrives,
    }));

const namesOf = (entries: readonly SeenEntry[]): string => [...new Set(entries.map(readingName))].join(', ');

const beforeOf = (plan: Plan, unit: Kit): string[] => {
  if (unit.fate === 'comes') return ['It was not aboard before.'];
  const had = plan.before.filter((entry) => entry.at === unit.id);
  if (had.length === 0) return ['No reading came to it before.'];
  const lost = had.filter((entry) => !entry.after);
  const came = `Before, it had ${namesOf(had)}.`;
  return lost.length === 0
    ? [came, 'All of that is aboard afterwards too.']
    : [came, `Lost with the refit: ${namesOf(lost)}.`];
};

const reachesOf = (index: CardBoat, plan: Plan, id: string): string[] =>
  asSentences([...antennaSays(index, plan, id), ...radarSays(index, plan, id)]);

/** What there is to say of a unit; undefined for an id that is no unit of the boat. */
export const unitCard = (index: CardBoat, plan: Plan, id: string): UnitCard | undefined => {
  const unit = index.kit.get(id);
  if (unit === undefined) return undefined;
  const sheet = index.sheetOf.get(id);
  const parts = {
    id,
    name: unit.name,
    stands: standsWords(index, unit),
    before: beforeOf(plan, unit),
    reaches: reachesOf(index, plan, id),
  };
  const wants = wantsOf(index, plan, unit);
  const tees = teesOfUnit(index, plan, id);
  if (sheet === undefined) {
    return { ...parts, wants, tees, rests: ['It has no sheet.'], says: [], hears: [], draws: [], plugs: [] };
  }
  return {
    ...parts,
    kind: sheet.name,
    rests: restsWords(unit, sheet),
    ...unitTalk(unit, sheet),
    wants,
    tees,
    draws: unitDraws({ index, plan, unit, sheet }),
    plugs: unitPlugs({ index, plan, unit, sheet }),
  };
};
