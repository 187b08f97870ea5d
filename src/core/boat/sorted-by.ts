import { byCodeUnit } from './ids.ts';
import { inCodeUnitOrder } from './in-schema-order.ts';

/** What a list is sorted by: texts by code unit, numbers by size, what is absent first. */
type SortKey = readonly (string | number | undefined)[];

const compare = (a: string | number | undefined, b: string | number | undefined): number => {
  if (a === undefined || b === undefined) return Number(b === undefined) - Number(a === undefined);
  if (typeof a === 'number' && typeof b === 'number') return a - b;
  return byCodeUnit(String(a), String(b));
};

const compareKeys = (a: SortKey, b: SortKey): number => {
  for (const [at, part] of a.entries()) {
    const order = compare(part, b[at]);
    if (order !== 0) return order;
  }
  return 0;
};

const textOf = (entry: unknown): string => JSON.stringify(inCodeUnitOrder(entry));

/** A copy of a list sorted by keys, then by everything else in an entry, so that only equal entries keep their order. */
export const sortedBy = <Entry>(list: readonly Entry[], keyOf: (entry: Entry) => SortKey): Entry[] =>
  list
    .map((entry) => ({ entry, key: keyOf(entry) }))
    .sort((a, b) => compareKeys(a.key, b.key) || byCodeUnit(textOf(a.entry), textOf(b.entry)))
    .map(({ entry }) => entry);
