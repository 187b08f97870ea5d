import * as z from 'zod';
import { byCodeUnit } from './ids.ts';
import { bareSchema } from './schema-at.ts';

const sortedEntries = (value: object): [string, unknown][] =>
  Object.entries(value).sort(([a], [b]) => byCodeUnit(a, b));

/** The same JSON value with the names of every object sorted by code unit. */
export const inCodeUnitOrder = (value: unknown): unknown => {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(inCodeUnitOrder);
  return Object.fromEntries(sortedEntries(value).map(([key, entry]) => [key, inCodeUnitOrder(entry)]));
};

const objectInOrder = (shape: Readonly<Record<string, z.core.$ZodType>>, value: object): object => {
  const given = new Map(Object.entries(value));
  const ordered: Record<string, unknown> = {};
  for (const key of Object.keys(shape)) {
    const schema = shape[key];
    const entry: unknown = given.get(key);
    if (schema !== undefined && entry !== undefined) ordered[key] = inOrder(schema, entry);
  }
  return ordered;
};

const inOrder = (schema: z.core.$ZodType, value: unknown): unknown => {
  if (typeof value !== 'object' || value === null) return value;
  const bare = bareSchema(schema);
  if (Array.isArray(value)) {
    if (bare instanceof z.ZodArray) return value.map((entry) => inOrder(bare.element, entry));
    return bare instanceof z.ZodTuple ? value : inCodeUnitOrder(value);
  }
  if (bare instanceof z.ZodObject) return objectInOrder(bare.shape, value);
  if (!(bare instanceof z.ZodRecord)) return inCodeUnitOrder(value);
  return Object.fromEntries(sortedEntries(value).map(([key, entry]) => [key, inOrder(bare.valueType, entry)]));
};

/**
 * The same value with the names of every object in the order of its schema, names the schema leaves free by code unit,
 * and every list as it was. The value must fit the schema.
 */
export const inSchemaOrder = <Schema extends z.ZodType>(schema: Schema, value: z.infer<Schema>): z.infer<Schema> =>
  // reason: only the order of names differs from what came in
  inOrder(schema, value) as z.infer<Schema>;
