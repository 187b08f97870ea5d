import fc from 'fast-check';
import { expect, test } from 'vitest';
import { guessedLength } from '../boat/guessed-length.ts';
import { UserError } from '../boat/user-error.ts';
import { type HullMeasuresId, hullMeasures } from '../facts/hull-measures.ts';
import { boatFromPattern } from './boat-from-pattern.ts';
import { patternOf } from './pattern-of.ts';
import { suggestedMeasures } from './suggested-measures.ts';

const ids = Object.keys(hullMeasures) as HullMeasuresId[]; // the keys of a literal table are its patterns

test('a sloop of 9.4 m is suggested the beam and draft that such sloops have (practice)', () => {
  expect(suggestedMeasures({ pattern: 'sloop-deck-stepped', lengthM: 9.4 })).toEqual({
    lengthM: 9.4,
    beamM: 3.1,
    draftM: 1.6,
    airDraftM: 13.65,
  });
});

test('a longer boat is never suggested less of anything, and beam grows slower than length', () => {
  const two = fc.tuple(fc.double({ min: 4, max: 30, noNaN: true }), fc.double({ min: 1, max: 1.9, noNaN: true }));
  fc.assert(
    fc.property(fc.constantFrom(...ids), two, (pattern, [lengthM, times]) => {
      const shorter = suggestedMeasures({ pattern, lengthM });
      const longer = suggestedMeasures({ pattern, lengthM: lengthM * times });
      expect(longer.beamM).toBeGreaterThanOrEqual(shorter.beamM);
      expect(longer.draftM).toBeGreaterThanOrEqual(shorter.draftM);
      expect(longer.airDraftM).toBeGreaterThanOrEqual(shorter.airDraftM);
      expect(longer.beamM).toBeLessThanOrEqual(shorter.beamM * times + 0.1);
    }),
  );
});

test('a measure that was given is kept, and counts as better known than one that was suggested', () => {
  const { hull } = boatFromPattern({ pattern: 'ketch', name: 'Given', lengthM: 12, beamM: 3.9, airDraftM: 17 });
  expect(hull).toMatchObject({ lengthM: 12, beamM: 3.9, draftM: 1.8, airDraft: { valueM: 17, how: 'papers' } });
  expect(boatFromPattern({ pattern: 'ketch', name: 'Guessed' }).hull.airDraft.how).toBe('guessed');
});

test('a way of 2 m straight is guessed at 2.6 m, from 2 m to 3.4 m, and one up a mast at 2.1 m', () => {
  expect(guessedLength(2, 'open')).toEqual({ valueM: 2.6, how: 'guessed', lessM: 0.6, moreM: 0.78 });
  expect(guessedLength(2, 'mast')).toEqual({ valueM: 2.1, how: 'guessed', lessM: 0.1, moreM: 0.63 });
});

const refusal = (act: () => unknown): string => {
  try {
    act();
  } catch (cause) {
    if (cause instanceof UserError) return cause.text;
    throw cause;
  }
  return 'nothing was refused';
};

test('a measure no boat has is turned away in both units, with what it may be', () => {
  expect(refusal(() => boatFromPattern({ pattern: 'ketch', name: 'Long', lengthM: 300 }))).toBe(
    'The length is 300.00 m (984 ft 3 in). Give one from 2.00 m (6 ft 7 in) to 60.00 m (196 ft 10 in).',
  );
});

test('a pattern nobody drew is answered with the list of those there are', () => {
  expect(refusal(() => patternOf('galleon'))).toMatch(
    /^There is no hull pattern “galleon”\. Choose one of these: sloop-/,
  );
});
