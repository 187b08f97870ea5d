import * as z from 'zod';
import { boatSchema } from '../../src/core/boat/boat-schema.ts';
import { bareSchema, schemaAt } from '../../src/core/boat/schema-at.ts';
import { extremeNumbers, growValue, type Lot, oddTexts, type Pool } from './grow-value.ts';
import { type DataPath, goneEntry, placesIn, valueAt, withAt } from './places-in.ts';
import type { BoatData } from './small-boats.ts';

/** A boat to damage, with the paths of all that stands in her and what stands under each name. */
export interface Seed {
  readonly data: BoatData;
  readonly places: readonly DataPath[];
  readonly pool: Pool;
}

const nameOf = (path: DataPath): string => String(path.findLast((step) => typeof step === 'string') ?? '');

const intoPool = (pool: Map<string, (string | number)[]>, data: BoatData, places: readonly DataPath[]): void => {
  const put = (name: string, value: unknown): void => {
    if (typeof value !== 'string' && typeof value !== 'number') return;
    const known = pool.get(name) ?? [];
    if (!known.includes(value)) known.push(value);
    pool.set(name, known);
  };
  for (const path of places) {
    put(nameOf(path), valueAt(data, path));
    const schema = schemaAt(boatSchema, path.slice(0, -1));
    if (schema !== undefined && bareSchema(schema) instanceof z.ZodRecord)
      put(`${nameOf(path.slice(0, -1))} key`, path.at(-1));
  }
};

/** What stands under each name in a boat. */
export const poolOf = (boat: object): Pool => {
  const pool = new Map<string, (string | number)[]>();
  // reason: any object is looked at by its names alone
  const data = boat as BoatData;
  intoPool(pool, data, placesIn(data));
  return pool;
};

/** Readies boats to be damaged; `richer` gives values for names they have not. */
export const startSeeds = (boats: readonly BoatData[], richer: BoatData): readonly Seed[] => {
  const common = new Map<string, (string | number)[]>();
  intoPool(common, richer, placesIn(richer));
  return boats.map((data) => {
    const own = new Map<string, (string | number)[]>();
    const places = placesIn(data);
    intoPool(own, data, places);
    return { data, places, pool: new Map([...common, ...own]) };
  });
};

/** What JSON.stringify cannot write, put in as text afterwards. */
const rawTexts = [
  '1e999',
  '-0',
  '1e308',
  '0.1e-400',
  '01',
  '.5',
  'NaN',
  '"\\ud800"',
  '{"a":1,"a":2}',
  '{"__proto__":{"id":"x"}}',
  '[,]',
  '{',
  ']',
];
const rawMark = (at: number): string => `@raw${at}@`;
const rawIn = (text: string): string => text.replace(/"@raw(\d+)@"/g, (_, at: string) => rawTexts[Number(at)] ?? '');

const nested = (depth: number): unknown => {
  let value: unknown = 1;
  for (let level = 0; level < depth; level += 1) value = level % 2 === 0 ? [value] : { in: value };
  return value;
};

const keysOf = (schema: z.core.$ZodType | undefined): readonly string[] => {
  const bare = schema === undefined ? undefined : bareSchema(schema);
  return bare instanceof z.ZodObject ? Object.keys(bare.shape) : [];
};

/** The same text as stands elsewhere: ids that lead nowhere, to another kind of thing, or round in a circle. */
const otherValue = ({ pool, places, data }: Seed, path: DataPath, lot: Lot): unknown => {
  const known = pool.get(lot(3) === 0 ? 'id' : nameOf(path)) ?? [];
  return lot(4) === 0 ? valueAt(data, places[lot(places.length)] ?? []) : known[lot(known.length)];
};

const changedValue = (seed: Seed, path: DataPath, { value, lot }: { value: unknown; lot: Lot }): unknown => {
  if (typeof value === 'number' && lot(2) === 0) {
    const near = [value * 1000, value / 1000, -value, value + 1, value - 1, Math.round(value), ...extremeNumbers];
    return near[lot(near.length)];
  }
  if (typeof value === 'string' && lot(3) === 0) return oddTexts[lot(oddTexts.length)];
  return otherValue(seed, path, lot);
};

const manyOf = (value: unknown, lot: Lot): unknown => {
  if (!Array.isArray(value)) return [value, value];
  const one: unknown = value[lot(value.length)];
  // seldom so many that it takes a while
  const times = lot(400) === 0 ? 3000 : 1 + lot(3);
  return [...value, ...Array(times).fill(one ?? 0)];
};

/** Damages a boat at one place. */
const hit = (seed: Seed, current: unknown, lot: Lot): unknown => {
  const path = seed.places[lot(seed.places.length)] ?? [];
  const value = valueAt(current, path);
  const schema = schemaAt(boatSchema, path);
  const grow = (inner: z.core.$ZodType, name: string): unknown => growValue(inner, { name, lot, pool: seed.pool });
  switch (lot(16)) {
    case 0:
    case 1:
      return withAt(current, path, goneEntry);
    case 2:
      return withAt(current, path, manyOf(value, lot));
    case 3:
      return withAt(current, path, [null, true, false, [], {}, '', 0][lot(7)]);
    case 4:
      return lot(6) === 0
        ? withAt(current, path, nested(lot(80)))
        : withAt(current, path, rawMark(lot(rawTexts.length)));
    case 5:
      return typeof value === 'object' && value !== null && !Array.isArray(value)
        ? withAt(current, [...path, oddTexts[lot(oddTexts.length)] ?? ''], 1)
        : withAt(current, path, { [typeof value === 'object' || value === undefined ? 'none' : String(value)]: value });
    case 6:
    case 7:
      return schema === undefined ? current : withAt(current, path, grow(schema, nameOf(path)));
    case 8:
    case 9:
    case 10: {
      const keys = keysOf(schema);
      const key = keys[lot(keys.length)];
      const inner = key === undefined ? undefined : schemaAt(boatSchema, [...path, key]);
      if (key === undefined || inner === undefined) break;
      return withAt(current, [...path, key], grow(inner, key));
    }
    default:
  }
  return withAt(current, path, changedValue(seed, path, { value, lot }));
};

/** A boat that was damaged at one to five places, each in a way its schema and its ids make likely to tell. */
export const mutateData = (seed: Seed, lot: Lot): unknown => {
  let current: unknown = seed.data;
  for (let hits = 1 + lot(lot(3) === 0 ? 5 : 1); hits > 0; hits -= 1) current = hit(seed, current, lot);
  return current;
};

/** The same as the text of a file, with what only a text can hold. */
export const mutateBoat = (seed: Seed, lot: Lot): string => {
  const data = mutateData(seed, lot);
  const spaces = lot(8) === 0 ? 2 : 0;
  return data === goneEntry ? '' : rawIn(JSON.stringify(data, null, spaces));
};
