import type { Boat, Kit } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { type QuoteTask, quoteTasks } from '../facts/quote-figures.ts';
import { shoppingKinds } from '../facts/shopping-kinds.ts';
import type { LineEntry, Plan, ReadingEntry } from '../plan-shape.ts';
import { quoteOf } from './quote-of.ts';
import type { HourLine, Quote, QuotePart, QuoteSums, Range } from './quote-shape.ts';

/** One state of a boat with its plan. */
export interface Planned {
  readonly boat: Boat;
  readonly plan: Plan;
}

/** A line that is new, gone, or of another length: its longest length before and after, in metres. */
export interface LineChange {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly beforeM?: number;
  readonly afterM?: number;
}

/** An item of which more or fewer are bought, or whose price is another: how many more, and what that costs more. */
export interface ItemChange extends Pick<QuotePart, 'id' | 'item' | 'kind' | 'by'> {
  readonly more: number;
  readonly cost: number;
}

/** A task that is done more or less often, or takes longer or shorter. */
export interface HourChange {
  readonly task: QuoteTask;
  readonly more: number;
  readonly hoursH: Range;
  readonly cost: Range;
}

/** The difference of two plans with its price; every number is after less before. */
export interface ChangeOrder {
  readonly currency: string;
  /** units to be fitted or taken out that were not, and those that are no longer */
  readonly units: { readonly now: readonly Kit[]; readonly nowNot: readonly Kit[] };
  readonly lines: readonly LineChange[];
  readonly items: readonly ItemChange[];
  readonly hours: readonly HourChange[];
  readonly sums: QuoteSums;
  readonly gained: readonly ReadingEntry[];
  readonly lost: readonly ReadingEntry[];
}

const less = (after: Range, before: Range): Range => ({
  least: after.least - before.least,
  most: after.most - before.most,
});

/** Hours are whole hundredths, so that their difference is one too. */
const lessHours = (after: Range, before: Range): Range => {
  const one = (end: keyof Range): number => (Math.round(after[end] * 100) - Math.round(before[end] * 100)) / 100;
  return { least: one('least'), most: one('most') };
};

const nothing: Range = { least: 0, most: 0 };

const isNothing = ({ least, most }: Range): boolean => least === 0 && most === 0;

const byKey = <Entry>(list: readonly Entry[], keyOf: (entry: Entry) => string): ReadonlyMap<string, Entry> =>
  new Map(list.map((entry) => [keyOf(entry), entry]));

const workedOn = ({ kit }: Boat): ReadonlyMap<string, Kit> =>
  byKey(
    kit.filter(({ fate }) => fate !== 'stays'),
    ({ id, sheet, fate }) => `${fate} ${id} ${sheet}`,
  );

const missingIn = <Entry>(one: ReadonlyMap<string, Entry>, other: ReadonlyMap<string, Entry>): Entry[] =>
  [...one].filter(([key]) => !other.has(key)).map(([, entry]) => entry);

const lineChanges = (before: Plan, after: Plan): LineChange[] => {
  const idOf = ({ id }: LineEntry): string => id;
  const fresh = ({ lines }: Plan) =>
    byKey(
      lines.filter(({ kept }) => kept === undefined),
      idOf,
    );
  const [old, now] = [fresh(before), fresh(after)];
  return [...new Set([...old.keys(), ...now.keys()])].sort(byCodeUnit).flatMap((id) => {
    const [was, is] = [old.get(id), now.get(id)];
    const line = is ?? was;
    if (line === undefined || was?.longestM === is?.longestM) return [];
    return [
      {
        ...{ id, from: line.from, to: line.to },
        ...(was === undefined ? {} : { beforeM: was.longestM }),
        ...(is === undefined ? {} : { afterM: is.longestM }),
      },
    ];
  });
};

interface Bought {
  readonly part: QuotePart;
  count: number;
  cost: number;
}

const boughtOf = (parts: readonly QuotePart[]): ReadonlyMap<string, Bought> => {
  const all = new Map<string, Bought>();
  for (const part of parts) {
    const own = all.get(part.id) ?? { part, count: 0, cost: 0 };
    all.set(part.id, {
      part,
      count: own.count + part.count,
      cost: own.cost + Math.round(part.count * (part.each ?? 0)),
    });
  }
  return all;
};

const itemChanges = (before: Quote, after: Quote): ItemChange[] => {
  const [old, now] = [boughtOf(before.parts), boughtOf(after.parts)];
  return [...new Set([...old.keys(), ...now.keys()])]
    .flatMap((id): ItemChange[] => {
      const [was, is] = [old.get(id), now.get(id)];
      const part = is?.part ?? was?.part;
      const more = (is?.count ?? 0) - (was?.count ?? 0);
      const cost = (is?.cost ?? 0) - (was?.cost ?? 0);
      if (part === undefined || (more === 0 && cost === 0)) return [];
      return [{ id, item: part.item, kind: part.kind, by: part.by, more, cost }];
    })
    .sort((a, b) => shoppingKinds.indexOf(a.kind) - shoppingKinds.indexOf(b.kind) || byCodeUnit(a.id, b.id));
};

const hourChanges = (before: Quote, after: Quote): HourChange[] => {
  const taskOf = ({ task }: HourLine): string => task;
  const [old, now] = [byKey(before.hours, taskOf), byKey(after.hours, taskOf)];
  return quoteTasks.flatMap((task): HourChange[] => {
    const [was, is] = [old.get(task), now.get(task)];
    const more = (is?.count ?? 0) - (was?.count ?? 0);
    const hoursH = lessHours(is?.hoursH ?? nothing, was?.hoursH ?? nothing);
    const cost = less(is?.cost ?? nothing, was?.cost ?? nothing);
    return more === 0 && isNothing(hoursH) && isNothing(cost) ? [] : [{ task, more, hoursH, cost }];
  });
};

const sumChange = (before: QuoteSums, after: QuoteSums): QuoteSums => ({
  parts: after.parts - before.parts,
  unpriced: after.unpriced - before.unpriced,
  hoursH: lessHours(after.hoursH, before.hoursH),
  labour: less(after.labour, before.labour),
  contingency: less(after.contingency, before.contingency),
  total: less(after.total, before.total),
});

const metIn = ({ readings }: Plan): ReadonlyMap<string, ReadingEntry> =>
  byKey(
    readings.filter(({ arrives }) => arrives),
    ({ reading, instance, at }) => `${reading} ${instance ?? ''} ${at}`,
  );

/** What changes from one state of a boat to another: units, lines, items, hours, readings, and the price of it all. Prices of both in one currency. */
export const changeOrder = ({ before, after }: { readonly before: Planned; readonly after: Planned }): ChangeOrder => {
  const [old, now] = [quoteOf(before), quoteOf(after)];
  const [oldUnits, units] = [workedOn(before.boat), workedOn(after.boat)];
  const [oldMet, met] = [metIn(before.plan), metIn(after.plan)];
  return {
    currency: now.currency,
    units: { now: missingIn(units, oldUnits), nowNot: missingIn(oldUnits, units) },
    lines: lineChanges(before.plan, after.plan),
    items: itemChanges(old, now),
    hours: hourChanges(old, now),
    sums: sumChange(old.sums, now.sums),
    gained: missingIn(met, oldMet),
    lost: missingIn(oldMet, met),
  };
};
