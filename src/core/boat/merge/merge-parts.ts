import { byCodeUnit } from '../ids.ts';

/** One step down into a boat: a name of an object, or the key of an entry of a list. */
export interface MergeStep {
  readonly in: 'fields' | 'list';
  readonly name: string;
}

export type MergePath = readonly MergeStep[];

/** What tells the entries of a list apart where they have no id. */
const keysOf: ReadonlyMap<string, readonly string[]> = new Map([
  ['needs', ['reading', 'instance', 'at']],
  ['sources', ['reading', 'instance', 'at']],
  ['proved', ['reading', 'instance', 'from']],
  ['orders', ['item']],
  ['revisions', ['mark']],
  ['accepted', ['finding']],
  ['instances', ['port', 'reading']],
  ['steering', ['place', 'by']],
  ['masts', ['foot']],
  ['underlays', ['view']],
  ['transducers', ['unit']],
  ['screens', ['unit']],
  ['typed', ['unit', 'what']],
  ['paperwork', ['paper']],
  ['starts', ['phase']],
  ['essentials', ['function']],
  ['jobs', ['job']],
  ['leaving', ['unit']],
]);

/** Objects in which every name stands for itself; any other is one thing, such as a length with how it is known. */
const apart: ReadonlySet<string> = new Set([
  '',
  'hull',
  'supply',
  'measures',
  'papers',
  'sea',
  'proof',
  'work',
  'prices',
  'prices.items',
  'limits',
  'labels',
  'pins',
  'pins.layouts',
  'pins.routes',
  'pins.pieces',
  'pins.wires',
  'pins.coax',
  'pins.fuses',
]);

const namesOf = (path: MergePath): string => path.map(({ name }) => name).join('.');

export const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The key of an entry in the list of some name; undefined where the entry has none. */
export const entryKey = (list: string, entry: unknown): string | undefined => {
  if (!isRecord(entry)) return undefined;
  const fields = keysOf.get(list) ?? ['id'];
  if (fields.every((field) => entry[field] === undefined)) return undefined;
  return fields.map((field) => String(entry[field] ?? '')).join(' ');
};

const keyed = (list: string, value: unknown): ReadonlyMap<string, unknown> | undefined => {
  if (!Array.isArray(value)) return undefined;
  const entries = new Map<string, unknown>();
  for (const entry of value) {
    const key = entryKey(list, entry);
    if (key === undefined || entries.has(key)) return undefined;
    entries.set(key, entry);
  }
  return entries;
};

const fieldsOf = (path: MergePath, value: unknown): ReadonlyMap<string, unknown> | undefined =>
  isRecord(value) && (path.at(-1)?.in === 'list' || apart.has(namesOf(path)))
    ? new Map(Object.entries(value))
    : undefined;

/** One version of a part of a boat, taken to pieces. */
type Pieces = ReadonlyMap<string, unknown>;

/**
 * Takes versions of one part of a boat to pieces, so that each piece can be compared by itself; a version that is absent
 * has none. Undefined where the part is one thing: a number, a word, a length, a list whose order counts.
 */
export const piecesOf = (
  path: MergePath,
  versions: readonly unknown[],
):
  | { readonly in: MergeStep['in']; readonly versions: readonly Pieces[]; readonly names: readonly string[] }
  | undefined => {
  const there = versions.filter((version) => version !== undefined);
  const isList = Array.isArray(there[0]);
  const list = path.at(-1)?.name ?? '';
  const taken = versions.map((version) => {
    if (version === undefined) return new Map<string, unknown>();
    return isList ? keyed(list, version) : fieldsOf(path, version);
  });
  const whole = taken.filter((pieces): pieces is Map<string, unknown> => pieces !== undefined);
  if (whole.length < taken.length || there.length === 0) return undefined;
  const names = [...new Set(whole.flatMap((pieces) => [...pieces.keys()]))].sort(byCodeUnit);
  return { in: isList ? 'list' : 'fields', versions: whole, names };
};
