import type { Draft } from 'mutative';
import { expect, test } from 'vitest';
import { anOpening } from '../an-opening.test-helper.ts';
import type { Opening } from '../opening.ts';
import { type Recipe, told } from '../told.test-helper.ts';

// reason: what is made here is never frozen
const opening = (own: Partial<Opening>) => anOpening(own) as Draft<Opening>;

test.each<[string, Recipe, string]>([
  [
    'an opening at a place that is not there',
    (boat) => {
      boat.openings = [opening({ place: 'hlem' })];
    },
    'openings[0].place: There is no place "hlem"; did you mean `helm`?',
  ],
  [
    'an opening for a unit that is not there',
    (boat) => {
      boat.openings = [opening({ for: 'radoi' })];
    },
    'openings[0].for: There is no unit "radoi"; did you mean `radio`?',
  ],
  [
    'a unit that is to come into two openings',
    (boat) => {
      boat.openings = [opening({ for: 'radio' }), opening({ id: 'hole-2', for: 'radio' })];
    },
    'openings[1].for: The unit "radio" is to come into "hole" already.',
  ],
  [
    'a plate over openings that nobody placed',
    (boat) => {
      boat.openings = ['hole', 'hole-2'].map((id) => opening({ id, plate: { id: 'dash' } }));
    },
    'openings[1].plate: The openings under the plate "dash" are not all placed.',
  ],
  [
    'a plate at two places',
    (boat) => {
      boat.openings = ['helm', 'locker'].map((place) => opening({ id: `hole-${place}`, place, plate: { id: 'dash' } }));
    },
    'openings[1].plate: The plate "dash" is at the place "helm" already.',
  ],
  [
    'a plate of two thicknesses',
    (boat) => {
      boat.openings = [4, 5].map((thicknessMm) =>
        opening({ id: `hole-${thicknessMm}`, atMm: [thicknessMm, 0], plate: { id: 'dash', thicknessMm } }),
      );
    },
    'openings[1].plate: What is said of the plate "dash" differs from opening to opening.',
  ],
])('%s is refused', (_, recipe, expected) => {
  expect(told(recipe)).toEqual([expected]);
});
