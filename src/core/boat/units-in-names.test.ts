import { expect, test } from 'vitest';
import * as z from 'zod';
import { boatSchema } from './boat-schema.ts';
import { bareSchema, schemaOfEntry } from './schema-at.ts';

const unitLast = /(M|Mm|Mm2|V|A|Ah|Ms|Pct)$/;

/** Numbers that only count or name something. */
const counts = new Set(['phase', 'instance', 'asInstance', 'version', 'pgn', 'spares', 'trunkTimes', 'conductors']);

const entries = (schema: z.core.$ZodType): [name: string, schema: z.core.$ZodType][] => {
  const bare = bareSchema(schema);
  if (bare instanceof z.ZodObject) return Object.entries<z.core.$ZodType>(bare.shape);
  if (bare instanceof z.ZodArray || bare instanceof z.ZodRecord) {
    const entry = schemaOfEntry(bare, '');
    return entry === undefined ? [] : [['', entry]];
  }
  if (bare instanceof z.ZodTuple) return bare.def.items.map((item) => ['', item]);
  return [];
};

const withoutUnit = (schema: z.core.$ZodType, path: string): string[] => {
  const bare = bareSchema(schema);
  if (!(bare instanceof z.ZodNumber)) {
    return entries(bare).flatMap(([name, inner]) => withoutUnit(inner, name === '' ? path : `${path}.${name}`));
  }
  const name = path.split('.').at(-1) ?? '';
  return unitLast.test(name) || counts.has(name) || bare.meta()?.unit !== undefined ? [] : [path];
};

test('every number of a boat file says its unit, in its name or beside it', () => {
  expect(withoutUnit(boatSchema, 'boat')).toEqual([]);
});

test('a number without a unit would be found', () => {
  const schema = z.strictObject({ hull: z.exactOptional(z.array(z.strictObject({ length: z.number() }))) });
  expect(withoutUnit(schema, 'boat')).toEqual(['boat.hull.length']);
});
