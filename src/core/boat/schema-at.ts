import * as z from 'zod';
import type { FilePath } from './place-in-file.ts';

/** A zod schema without what only says that a value may be absent or comes later (optional, lazy). */
export const bareSchema = (schema: z.core.$ZodType): z.core.$ZodType => {
  let bare = schema;
  for (;;) {
    if (bare instanceof z.ZodExactOptional || bare instanceof z.ZodOptional) bare = bare.unwrap();
    else if (bare instanceof z.ZodLazy) bare = bare.unwrap();
    else return bare;
  }
};

/** The schema of one entry of a list, tuple, object or record; undefined where the schema knows no such entry. */
export const schemaOfEntry = (schema: z.core.$ZodType, step: string | number): z.core.$ZodType | undefined => {
  const bare = bareSchema(schema);
  if (bare instanceof z.ZodArray) return bare.element;
  if (bare instanceof z.ZodTuple) return bare.def.items[Number(step)];
  if (bare instanceof z.ZodRecord) return bare.valueType;
  if (bare instanceof z.ZodObject) return Object.hasOwn(bare.shape, step) ? bare.shape[step] : undefined;
  return undefined;
};

/** The schema at a path below another; undefined where the path leaves the schema. */
export const schemaAt = (schema: z.core.$ZodType, path: FilePath): z.core.$ZodType | undefined => {
  let at: z.core.$ZodType | undefined = schema;
  for (const step of path) at = at === undefined ? undefined : schemaOfEntry(at, step);
  return at;
};

/** The names an object may have by its schema, in the schema's order; none for anything but an object or a record of fixed names. */
export const knownNames = (schema: z.core.$ZodType | undefined): string[] => {
  const bare = schema === undefined ? undefined : bareSchema(schema);
  if (bare instanceof z.ZodObject) return Object.keys(bare.shape);
  if (bare instanceof z.ZodRecord && bare.keyType instanceof z.ZodEnum) return bare.keyType.options.map(String);
  return [];
};
