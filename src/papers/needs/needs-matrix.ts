import type { Boat, Kit, Need } from '../../core/boat/boat-schema.ts';
import { numberedReadings } from '../../core/facts/numbered-readings.ts';
import { type ReadingId, readingIds } from '../../core/facts/reading-ids.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import type { Plan, ReadingEntry } from '../../core/plan-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import { shortLabels } from '../sheet/short-label.ts';

/** A screen, or another unit that wants to know something. */
export interface NeedsColumn {
  readonly unit: string;
  readonly name: string;
  /** a few words that tell it from the others */
  readonly label: string;
}

/** Whether a reading is wanted at a unit, whether it gets there, and how that stood before the refit. */
export interface NeedsCell {
  readonly unit: string;
  /** what the boat file asks for; absent where nobody asks */
  readonly need?: Need;
  /** what the plan says of it; absent where nobody asks, or the unit is not aboard in the phase planned */
  readonly entry?: ReadingEntry;
  /** whether this very unit had the reading before the refit */
  readonly seenBefore: boolean;
}

/** One reading, or one of several of its kind. */
export interface NeedsRow {
  readonly key: string;
  readonly reading: ReadingId;
  readonly instance?: number;
  readonly name: string;
  /** whether more of its kind can be asked for by number */
  readonly isNumbered: boolean;
  readonly cells: readonly NeedsCell[];
}

export interface NeedsMatrix {
  readonly columns: readonly NeedsColumn[];
  /** readings that somebody asks for, or had before the refit, in the order of the trade */
  readonly rows: readonly NeedsRow[];
  /** readings nobody asks for */
  readonly others: readonly NeedsRow[];
}

/**
 * Kinds of unit on which people read, then those that are told something, in the order of their columns: they are offered
 * one even before they want anything.
 */
const readers = 'display instrument sounder tablet computer pilot-head pilot-computer pilot vhf-radio ais'.split(' ');

const columnsOf = (boat: Boat): NeedsColumn[] => {
  const sheets = new Map(boat.sheets.map((sheet) => [sheet.id, sheet]));
  const sheetOf = new Map(
    boat.kit.flatMap((unit) => {
      const sheet = sheets.get(unit.sheet);
      return sheet === undefined ? [] : [[unit.id, sheet] as const];
    }),
  );
  const labels = shortLabels(boat.kit, sheetOf);
  const asked = new Set(boat.needs.map(({ at }) => at));
  const rankOf = (unit: string): number => {
    const rank = readers.indexOf(sheetOf.get(unit)?.kind ?? '');
    return rank < 0 ? readers.length : rank;
  };
  const isOffered = ({ id, fate }: Kit): boolean => fate !== 'goes' && rankOf(id) < readers.length;
  return boat.kit
    .filter((unit) => asked.has(unit.id) || isOffered(unit))
    .map(({ id, name }) => ({ unit: id, name, label: labels.get(id) ?? name }))
    .sort((a, b) => rankOf(a.unit) - rankOf(b.unit) || byCodeUnit(a.unit, b.unit));
};

type Which = Pick<NeedsRow, 'reading' | 'instance'>;

const keyOf = ({ reading, instance }: { reading: ReadingId; instance?: number }): string =>
  `${reading} ${instance ?? ''}`;

const whichOf = ({ reading, instance }: { reading: ReadingId; instance?: number }): Which => ({
  reading,
  ...(instance === undefined ? {} : { instance }),
});

/** In the order of the trade, so that a row stays where it is when it is filled. */
export const byTrade = (a: Which, b: Which): number =>
  readingIds.indexOf(a.reading) - readingIds.indexOf(b.reading) || (a.instance ?? -1) - (b.instance ?? -1);

/**
 * What is wanted where, and what becomes of it: readings down, screens across. `more` adds rows that somebody has opened
 * and not filled yet, such as a third tank. Pure; the sizes follow the boat.
 */
export const needsMatrix = (
  { boat, plan }: { readonly boat: Boat; readonly plan: Plan },
  more: readonly Which[] = [],
): NeedsMatrix => {
  const columns = columnsOf(boat);
  const cellKey = (which: Which, unit: string): string => `${keyOf(which)} ${unit}`;
  const needs = new Map(boat.needs.map((need) => [cellKey(need, need.at), need]));
  const entries = new Map(plan.readings.map((entry) => [cellKey(entry, entry.at), entry]));
  const seen = new Set(plan.before.map((entry) => cellKey(entry, entry.at)));
  const rowOf = (which: Which): NeedsRow => ({
    ...which,
    key: keyOf(which),
    name: readingName(which),
    isNumbered: numberedReadings.has(which.reading),
    cells: columns.map(({ unit }) => {
      const key = cellKey(which, unit);
      const [need, entry] = [needs.get(key), entries.get(key)];
      return {
        unit,
        ...(need === undefined ? {} : { need }),
        ...(entry === undefined ? {} : { entry }),
        seenBefore: seen.has(key),
      };
    }),
  });
  const shown = new Set(columns.map(({ unit }) => unit));
  const had = plan.before.filter(({ at }) => shown.has(at));
  const listed = new Map([...boat.needs, ...had, ...more].map((one) => [keyOf(one), whichOf(one)]));
  const named = new Set([...listed.values()].map(({ reading }) => reading));
  return {
    columns,
    rows: [...listed.values()].sort(byTrade).map(rowOf),
    others: readingIds.filter((reading) => !named.has(reading)).map((reading) => rowOf({ reading })),
  };
};
