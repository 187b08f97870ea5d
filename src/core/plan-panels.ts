import type { BoatIndex } from './boat/boat-index.ts';
import { byCodeUnit } from './boat/ids.ts';
import { lastPhase } from './boat/phase.ts';
import type { PlanDraft, StandingJoin } from './plan-shape.ts';
import { bankEntry } from './power/source-side/bank-entry.ts';
import type { WantedAt } from './power/source-side/circuit-room.ts';
import { converterEntry } from './power/source-side/converter-entry.ts';
import { Draws } from './power/source-side/draw.ts';
import { panelEntry } from './power/source-side/panel-entry.ts';
import { panelFor, wantedCircuits } from './power/source-side/wanted-circuits.ts';
import { unitLoads } from './power/unit-loads.ts';

/** What the source side of a boat is planned from. */
export interface PanelsInput {
  readonly index: BoatIndex;
  readonly joinsAt: (phase: number) => readonly StandingJoin[];
}

export type PanelsParts = Pick<PlanDraft, 'banks' | 'converters' | 'panels' | 'noPanel' | 'negativeAt' | 'mains'>;

/** Mains aboard is planned nowhere: what is on it, and the ways that pass it, only to keep away from. */
const mainsOf = ({ boat }: BoatIndex): PanelsParts['mains'] => ({
  chargers: (boat.supply.chargers ?? [])
    .filter(({ kind }) => kind === 'mains')
    .map(({ id }) => id)
    .sort(byCodeUnit),
  ways: boat.ways
    .filter(({ near = [] }) => near.includes('mains'))
    .map(({ id }) => id)
    .sort(byCodeUnit),
});

/** What wants a circuit in each phase; the sums of a refit start with the first. */
const wantedByPhase = ({ index, joinsAt }: PanelsInput): WantedAt[] =>
  Array.from({ length: lastPhase(index.boat) }, (_, at) => {
    const phase = at + 1;
    const joins = joinsAt(phase);
    return { phase, wanted: wantedCircuits(index, { phase, joins, loads: unitLoads(index, phase, joins) }) };
  });

const noPanelOf = (index: BoatIndex, phases: readonly WantedAt[]): PanelsParts['noPanel'] =>
  phases.flatMap(({ phase, wanted }) => {
    const without = wanted.filter((one) => panelFor(index, one) === undefined).map(({ target }) => target);
    return without.length === 0 ? [] : [{ phase, wanted: without.sort(byCodeUnit) }];
  });

/**
 * The source side of a boat: each bank, converter and panel with what guards it, what a short there gives, what hangs on it and
 * the circuits that are left, phase by phase. Pure; sorted by id.
 */
export const planPanels = ({ index, joinsAt }: PanelsInput): PanelsParts => {
  const { banks, dcdc, panels, negativeAt } = index.boat.supply;
  const phase = lastPhase(index.boat);
  const draws = new Draws(index, unitLoads(index, phase, joinsAt(phase)));
  const phases = wantedByPhase({ index, joinsAt });
  return {
    banks: banks.map((bank) => bankEntry(index, draws, bank)).sort((a, b) => byCodeUnit(a.bank, b.bank)),
    converters: dcdc
      .map((converter) => converterEntry(index, draws, converter))
      .sort((a, b) => byCodeUnit(a.converter, b.converter)),
    panels: panels
      .map((panel) => panelEntry({ index, draws, phases }, panel))
      .sort((a, b) => byCodeUnit(a.panel, b.panel)),
    noPanel: noPanelOf(index, phases),
    ...(negativeAt === undefined ? {} : { negativeAt }),
    mains: mainsOf(index),
  };
};
