import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from './a-boat.test-helper.ts';
import { aFullBoat } from './full-boat.test-helper.ts';
import { NewerFile } from './newer-file.ts';
import { readBoat } from './read-boat.ts';
import { readNewerBoat } from './read-newer-boat.ts';
import { UserError } from './user-error.ts';
import { writeBoat } from './write-boat.ts';

const tern = aBoat().boat;

const newer = (data: object): string => JSON.stringify({ ...data, version: 7 });

test('a file of a newer version is refused by what may change it, and read by what only shows it', () => {
  expect(() => readBoat(newer(tern))).toThrow(NewerFile);
  expect(readNewerBoat(newer(tern))).toEqual({ version: 7, boat: tern, leftOut: [] });
});

test('names, parts and choices of a newer version are left out with the smallest thing round them', () => {
  const [first, ...others] = tern.kit;
  const read = readNewerBoat(
    newer({ ...tern, ropes: [], kit: [{ ...first, colour: 'red' }, ...others, { ...first, id: 'odd', fate: 'lent' }] }),
  );
  expect(read.boat).toEqual(tern);
  expect(read.leftOut).toEqual([
    { part: 'kit', count: 2 },
    { part: 'ropes', count: 1 },
  ]);
});

test('what leads to something left out goes too', () => {
  const [first, ...others] = tern.places;
  const read = readNewerBoat(newer({ ...tern, places: [{ ...first, exposure: 'vacuum' }, ...others] }));
  expect(read.boat.places).toHaveLength(others.length);
  expect(read.boat.kit.some(({ place }) => place === first?.id)).toBe(false);
  expect(readBoat(writeBoat(read.boat))).toEqual(read.boat);
});

test('a boat without a hull that can be read is refused in a sentence', () => {
  expect(() => readNewerBoat(newer({ ...tern, hull: { keels: 3 } }))).toThrow(UserError);
});

const placesIn = (value: unknown, path: readonly (string | number)[] = []): (readonly (string | number)[])[] =>
  typeof value !== 'object' || value === null
    ? [path]
    : [path, ...Object.entries(value).flatMap(([key, inner]) => placesIn(inner, [...path, key]))];

const places = placesIn(aFullBoat()).slice(1);

test('whatever a newer version puts in any place, a boat that holds together is read or a sentence said', () => {
  const odd = fc.oneof(fc.jsonValue({ maxDepth: 2 }), fc.constantFrom('helm', 'nav.n2k', 'house'));
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.constantFrom(...places), odd), { minLength: 1, maxLength: 4 }), (changes) => {
      const data: unknown = structuredClone(aFullBoat());
      for (const [path, value] of changes) {
        let at = data;
        for (const step of path.slice(0, -1)) at = Reflect.get(Object(at), step);
        if (typeof at === 'object' && at !== null) Reflect.set(at, path.at(-1) ?? '', value);
      }
      const text = JSON.stringify({ ...Object(data), format: 'fairlead-boat', version: 2 });
      try {
        const { boat } = readNewerBoat(text);
        expect(readBoat(writeBoat(boat))).toEqual(boat);
      } catch (error) {
        if (!(error instanceof UserError)) throw error;
      }
    }),
    { numRuns: 25 },
  );
});
