import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../../../../core/boat/a-boat.test-helper.ts';
import { gridM, neighboursOf, snapped } from './snap.ts';

const tern = aBoat().boat;
const neighbours = neighboursOf(tern, 'mast-base');
const usual = { neighbours, stepM: gridM.metres, reachM: 0.1, isFree: false } as const;

test('places that a way leads to are the neighbours of a place', () => {
  expect(neighbours.map(({ id }) => id)).toEqual(['helm', 'locker']);
});

test('from above a place near the middle lies on the centreline, else on the grid of 5 cm', () => {
  expect(snapped({ ...usual, view: 'top', at: { alongM: 4.02, acrossM: 0.06 } })).toEqual({
    alongM: 4,
    acrossM: 0,
    caught: { what: 'centreline' },
  });
  const off = snapped({ ...usual, view: 'top', at: { alongM: 4.03, acrossM: -0.31 } });
  expect(off.alongM).toBeCloseTo(4.05, 9);
  expect(off.acrossM).toBeCloseTo(-0.3, 9);
  expect(off).not.toHaveProperty('caught');
});

test('from the side a place comes to the height of the neighbour that is nearest to it', () => {
  const caught = snapped({ ...usual, view: 'side', at: { alongM: 6, acrossM: 1.34 } });
  expect(caught).toMatchObject({ acrossM: 1.4, caught: { what: 'height', of: 'helm dash' } });
  expect(snapped({ ...usual, view: 'side', at: { alongM: 6, acrossM: 0.06 } })).not.toHaveProperty('caught');
});

test('the grid of feet is two inches, and a held key leaves all of it', () => {
  const twoInches = snapped({ ...usual, stepM: gridM.feet, view: 'top', at: { alongM: 0.12, acrossM: 1 } });
  expect(twoInches.alongM).toBeCloseTo(0.1016, 9);
  const free = snapped({ ...usual, isFree: true, view: 'top', at: { alongM: 4.023, acrossM: 0.06 } });
  expect(free.alongM).toBeCloseTo(4.02, 9);
  expect(free.acrossM).toBeCloseTo(0.06, 9);
});

test('nothing is ever moved farther from the hand than the reach, or half a step of the grid', () => {
  const metres = fc.double({ min: -5, max: 20, noNaN: true });
  fc.assert(
    fc.property(
      metres,
      metres,
      fc.constantFrom('side', 'top', 'astern'),
      fc.boolean(),
      (alongM, acrossM, view, isFree) => {
        const found = snapped({ ...usual, at: { alongM, acrossM }, view, isFree });
        for (const moved of [found.alongM - alongM, found.acrossM - acrossM]) {
          expect(Math.abs(moved)).toBeLessThanOrEqual((isFree ? 0.005 : 0.1) + 1e-9);
        }
      },
    ),
  );
});
