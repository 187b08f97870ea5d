import fc from 'fast-check';
import { expect, it } from 'vitest';
import { mismatchLossDb, reflectedPct, returnLossDb, swrAtRadio } from './swr.ts';

it.each([
  ['CX-10', 2, 9.5424, 11.111, 0.51153],
  ['CX-11', 1.5, 13.979, 4, 0.17729],
  ['CX-12', 3, 6.0206, 25, 1.2494],
])('%s: a ratio of %d (transmission-line theory)', (_id, swr, back, pct, lossDb) => {
  expect(returnLossDb(swr)).toBeCloseTo(back, 2);
  expect(reflectedPct(swr)).toBeCloseTo(pct, 2);
  expect(mismatchLossDb(swr)).toBeCloseTo(lossDb, 3);
});

it('CX-18: an antenna of 3 behind 3 dB of cable reads as 1.67, so that a bad antenna looks good (computed)', () => {
  const read = swrAtRadio({ antennaSwr: 3, cableDb: 3 });
  expect(read).toBeCloseTo(1.6688, 2);
  expect(returnLossDb(read)).toBeCloseTo(12.021, 2);
});

it('cable always flatters, and none at all tells the truth', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1.01, max: 50, noNaN: true }),
      fc.double({ min: 0.01, max: 20, noNaN: true }),
      (antennaSwr, cableDb) => {
        expect(swrAtRadio({ antennaSwr, cableDb })).toBeLessThan(antennaSwr);
        expect(swrAtRadio({ antennaSwr, cableDb: 0 })).toBeCloseTo(antennaSwr, 6);
      },
    ),
  );
});
