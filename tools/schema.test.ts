import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../src/core/boat/a-boat.test-helper.ts';
import { boatSchema } from '../src/core/boat/boat-schema.ts';
import { aFullBoat } from '../src/core/boat/full-boat.test-helper.ts';
import { planSchema } from '../src/core/plan-shape.ts';
import { jsonSchemaOf } from './schema.ts';

const ajv = new Ajv2020({ strict: true, strictRequired: false, strictTypes: false });
ajv.addKeyword('unit');
const fits = ajv.compile(jsonSchemaOf(boatSchema));

type Path = readonly (string | number)[];

/** A boat's JSON with the value at a path put in place of another, or taken out. */
const spoilt = (path: Path, value: unknown): unknown => {
  const data: unknown = JSON.parse(JSON.stringify(aFullBoat()));
  let at = data;
  for (const step of path.slice(0, -1)) at = Reflect.get(Object(at), step);
  const last = path.at(-1) ?? '';
  if (value === undefined) Reflect.deleteProperty(Object(at), last);
  else Reflect.set(Object(at), last, value);
  return data;
};

test('the exported schema and the program both take a good boat', () => {
  for (const boat of [aBoat().boat, aFullBoat()]) {
    expect(boatSchema.safeParse(boat).success).toBe(true);
    expect(fits(boat)).toBe(true);
  }
});

test.each<[string, Path, unknown]>([
  ['a word that is no choice', ['kit', 0, 'fate'], 'sold'],
  ['a number that is a text', ['hull', 'lengthM'], '8.4'],
  ['what JSON makes of a number that is none', ['hull', 'lengthM'], null],
  ['a length below nothing', ['ways', 0, 'length', 'valueM'], -1],
  ['half a phase', ['kit', 0, 'phase'], 1.5],
  ['an unknown name', ['kit', 0, 'colour'], 'red'],
  ['an unknown name at the top', ['anchors'], []],
  ['a missing name', ['kit', 0, 'place'], undefined],
  ['an id with a capital', ['kit', 0, 'id'], 'Compass'],
  ['a way with one end', ['ways', 0, 'ends'], ['helm']],
  ['a way with three ends', ['ways', 0, 'ends'], ['helm', 'locker', 'helm']],
  ['a message of two forms', ['sheets', 2, 'ports', 0, 'sends', 0], { pgn: 129025, reading: 'position' }],
  ['a message of no form', ['sheets', 2, 'ports', 0, 'sends', 0], { everyMs: 100 }],
  ['a heard message of no form', ['sheets', 0, 'ports', 0, 'hears', 0], {}],
  ['a grade that is none', ['prices', 'byGrade', 'thin'], { trunkPerM: 1, dropPerM: 1 }],
  ['another version', ['version'], 2],
])('the exported schema and the program both refuse %s', (_, path, value) => {
  const data = spoilt(path, value);
  expect(boatSchema.safeParse(data).success).toBe(false);
  expect(fits(data)).toBe(false);
});

const pathsIn = (value: unknown, path: Path = []): Path[] => {
  const inner = Array.isArray(value)
    ? [...value.entries()]
    : typeof value === 'object' && value !== null
      ? Object.entries(value)
      : [];
  return [path, ...inner.flatMap(([step, entry]) => pathsIn(entry, [...path, step]))];
};

/** What JSON Schema cannot say: that doubt is no more than the length it is a doubt of. */
const beyondJsonSchema = 'make lessM smaller';

test('whatever is put anywhere, the exported schema and the program agree on it', () => {
  const values = fc.oneof(
    fc.jsonValue({ maxDepth: 2 }),
    fc.constantFrom('helm', 'Helm', 'radio.dc', 0, 1, 2.5, -1, 1e9, ''),
  );
  fc.assert(
    fc.property(fc.constantFrom(...pathsIn(aFullBoat()).slice(1)), values, (path, value) => {
      const data = spoilt(path, value);
      const parsed = boatSchema.safeParse(data);
      const refused = parsed.error?.issues.filter((issue) => !issue.message.includes(beyondJsonSchema)) ?? [];
      expect(fits(data)).toBe(refused.length === 0);
    }),
  );
});

test('the schema of a plan can be compiled and refuses what is no plan', () => {
  const fitsPlan = ajv.compile(jsonSchemaOf(planSchema));
  expect(fitsPlan({ boat: 'Tern' })).toBe(false);
});
