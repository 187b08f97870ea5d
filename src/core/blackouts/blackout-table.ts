import type { BlackoutEntry, BlackoutParts, Failure, Loss } from '../blackouts-shape.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import type { Need } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { isAboard } from '../boat/phase.ts';
import { remember } from '../boat/remember.ts';
import { rememberFor } from '../boat/remember-for.ts';
import type { BusEntry, JoinEntry, LineEntry, StandingJoin } from '../plan-shape.ts';
import type { Reaches } from '../readings/reaches.ts';
import { askedBy } from '../readings/ways-in.ts';
import { type BusState, busTrunk } from './bus-trunk.ts';
import { darkNodesIn } from './dark-nodes.ts';
import { type Effect, effectOf, type FailureModel, failureModel, type Hit, stillLines } from './effect.ts';
import { everyFailure } from './every-failure.ts';
import { needLosses } from './need-losses.ts';
import { supplyGraph, type WiredBoat } from './supply-graph.ts';
import { type TableLine, vitalsOf } from './vitals.ts';

/** What a boat is laid with. */
export interface LaidBoat {
  readonly index: BoatIndex;
  readonly lines: readonly LineEntry[];
  /** joins of the last phase, with their lines */
  readonly joins: readonly JoinEntry[];
  readonly buses: readonly Pick<BusEntry, 'id' | 'walk' | 'ends'>[];
  readonly joinsAt: (phase: number) => readonly StandingJoin[];
}

/** Failures that do just the same, and what they do. */
export interface FailureGroup {
  readonly failures: readonly Failure[];
  readonly effect: Effect;
  readonly dark: readonly string[];
  readonly still: readonly string[];
}

/** The boat as she is wired in a phase, with her lines of the last. */
const wiredIn = ({ index, lines, joins, joinsAt }: LaidBoat, phase: number): WiredBoat => {
  const linesOf = new Map(joins.map((join) => [join.id, join.lines]));
  const aboard = index.boat.kit.filter((unit) => isAboard(unit, phase)).map(({ id }) => id);
  return {
    index,
    aboard: new Set([...aboard].sort(byCodeUnit)),
    joins: joinsAt(phase).map((join) => ({ ...join, lines: linesOf.get(join.id) ?? [] })),
    lines,
  };
};

/** A boat in one phase made ready for failures. */
export const modelIn = (laid: LaidBoat, phase: number): FailureModel => {
  const wired = wiredIn(laid, phase);
  const graph = supplyGraph(wired);
  return failureModel({
    wired,
    graph,
    darkNodes: darkNodesIn(graph),
    trunks: new Map(laid.buses.map((bus) => [bus.id, busTrunk(bus, laid.lines)])),
  });
};

/** Lines that carry nothing tell where a bus is cut; only where more than one part is left the parts are told apart as well. */
const busSign = (bus: string, { partOf, doubtful }: BusState): string => {
  const parts = new Set(partOf.values()).size > 1 ? [...partOf].join(' ') : '';
  return `${bus} ${doubtful} ${partOf.size} ${parts}`;
};

/** Equal for failures that do just the same. */
const signOf = ({ dark, still, effect }: Omit<FailureGroup, 'failures'>): string =>
  [dark.join(' '), still.join(' '), ...[...effect.buses].map(([bus, state]) => busSign(bus, state))].join('|');

const byFailure = (a: Failure, b: Failure): number => byCodeUnit(a.fails, b.fails) || byCodeUnit(a.how, b.how);

/** Every failure with what it does, those that do the same together. */
const groupsOf = (model: FailureModel, hits: readonly Hit[]): FailureGroup[] => {
  const groups = new Map<string, FailureGroup>();
  for (const hit of hits) {
    const effect = effectOf(model, hit);
    const dark = [...effect.dark].sort(byCodeUnit);
    const still = stillLines(model, effect).sort(byCodeUnit);
    const sign = signOf({ dark, still, effect });
    const same = groups.get(sign);
    groups.set(sign, { failures: [...(same?.failures ?? []), ...hit.failures], effect, dark, still });
  }
  return [...groups.values()]
    .map((group) => ({ ...group, failures: [...group.failures].sort(byFailure) }))
    .sort(({ failures: [a] }, { failures: [b] }) => (a === undefined || b === undefined ? 0 : byFailure(a, b)));
};

/** What a failure does, as a line of the table. */
export const tableLine = (
  { failures: [first, ...also], effect, dark, still }: FailureGroup,
  loses: Loss[],
): TableLine[] => {
  if (first === undefined) return [];
  const doubtful = [...effect.buses].flatMap(([bus, state]) => (state.doubtful ? [bus] : []));
  const entry: BlackoutEntry = {
    ...first,
    ...(also.length === 0 ? {} : { also }),
    loses,
    dark: [...dark],
    still: [...still],
    ...(doubtful.length === 0 ? {} : { doubtful }),
  };
  return [{ entry, effect }];
};

/** How many tables are kept: that of the edit before, for a step back. */
const mostTables = 2;

/** The table for what is needed where; whether a reading must arrive is no part of it. */
const tableOf = (
  { model, groups }: { readonly model: FailureModel; readonly groups: readonly FailureGroup[] },
  { ways, lossesOf }: ReturnType<typeof needLosses>,
) =>
  remember({
    most: mostTables,
    keyOf: (needs: readonly Need[]) => needs.map(askedBy).join('\n'),
    find: (needs): BlackoutParts => {
      const { held, losses } = lossesOf(needs);
      const lines = groups.flatMap((group, at) => tableLine(group, losses[at] ?? []));
      return {
        blackouts: lines.map(({ entry }) => entry),
        vitals: vitalsOf({ wired: model.wired, ways, held, lines }),
      };
    },
  });

/** What each failure does to the boat as she is laid: none of it hangs on what is needed where, so it is kept with the lines. */
export const failuresIn = rememberFor({
  most: 4,
  keyOf: ({ phase }: { readonly phase: number; readonly laid: LaidBoat }) => String(phase),
  find: (_lines: readonly LineEntry[], { laid, phase }) => {
    const model = modelIn(laid, phase);
    const groups = groupsOf(model, everyFailure(model));
    const effects = groups.map(({ effect }) => effect);
    const tableIn = rememberFor({
      most: 1,
      keyOf: () => '',
      find: (_of: Reaches['of'], reaches: Reaches) =>
        tableOf({ model, groups }, needLosses(model.wired, effects, reaches)),
    });
    return { model, groups, tableIn };
  },
});

/**
 * Every single failure of a boat in one phase and what it takes off which screen, failures that do the same together; and
 * those that take the last of a vital reading. Pure.
 */
export const blackoutTable = (laid: LaidBoat, reaches: Reaches, phase: number): BlackoutParts =>
  failuresIn(laid.lines, { laid, phase }).tableIn(reaches.of, reaches)(laid.index.boat.needs);
