import * as z from 'zod';
import type { FilePath } from './place-in-file.ts';
import { bareSchema } from './schema-at.ts';

/** Stands for a value of which nothing can be kept. */
export const nothingKept = Symbol('nothing kept');

type Kept = unknown | typeof nothingKept;

/** What is told of each entry that is left out. */
type LeftOut = (path: FilePath) => void;

const isObject = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const fits = (schema: z.core.$ZodType, value: unknown): boolean => z.safeParse(schema, value).success;

const listKept = (element: z.core.$ZodType, value: readonly unknown[], at: { path: FilePath; out: LeftOut }): Kept =>
  value
    .map((entry, index) => keepKnown(element, entry, { path: [...at.path, index], out: at.out }))
    .filter((entry) => entry !== nothingKept);

const fieldsKept = (
  schemaOf: (key: string) => z.core.$ZodType | undefined,
  value: object,
  { path, out }: { path: FilePath; out: LeftOut },
): Kept => {
  const kept: [string, unknown][] = [];
  for (const [key, entry] of Object.entries(value)) {
    const schema = schemaOf(key);
    if (schema === undefined) out([...path, key]);
    const known = schema === undefined ? nothingKept : keepKnown(schema, entry, { path: [...path, key], out });
    if (known !== nothingKept) kept.push([key, known]);
  }
  return Object.fromEntries(kept);
};

const partsKept = (bare: z.core.$ZodType, value: unknown, at: { path: FilePath; out: LeftOut }): Kept => {
  if (bare instanceof z.ZodArray && Array.isArray(value)) return listKept(bare.element, value, at);
  if (bare instanceof z.ZodObject && isObject(value)) {
    return fieldsKept((key) => (Object.hasOwn(bare.shape, key) ? bare.shape[key] : undefined), value, at);
  }
  if (bare instanceof z.ZodRecord && isObject(value)) {
    return fieldsKept((key) => (fits(bare.keyType, key) ? bare.valueType : undefined), value, at);
  }
  if (bare instanceof z.ZodUnion) {
    for (const option of bare.options) {
      const kept = keepKnown(option, value, { path: at.path, out: () => undefined });
      if (kept !== nothingKept) return kept;
    }
    return nothingKept;
  }
  return value;
};

/**
 * As much of a value as its schema knows: names it does not know are left out, and so is whatever does not fit, with the
 * smallest thing around it that may be absent. Gives `nothingKept` where nothing may be left; `out` hears the place of each
 * thing left out, the largest only.
 */
export const keepKnown = (
  schema: z.core.$ZodType,
  value: unknown,
  { path, out }: { path: FilePath; out: LeftOut },
): Kept => {
  // most of a file is as it was in the version that is known
  if (fits(schema, value)) return value;
  const within: FilePath[] = [];
  const kept = partsKept(bareSchema(schema), value, { path, out: (place) => within.push(place) });
  if (kept !== nothingKept && fits(schema, kept)) {
    for (const place of within) out(place);
    return kept;
  }
  out(path);
  return nothingKept;
};
