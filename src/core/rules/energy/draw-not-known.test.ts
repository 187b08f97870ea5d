import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { drawNotKnown } from './draw-not-known.ts';

test('a boat of which every draw is known passes, and so does one whose unknown unit leaves', () => {
  expect(findingsOf(drawNotKnown)).toEqual([]);
  expect(findingsOf(drawNotKnown, { plan: { unknownDraws: [{ kit: 'radio', before: true, after: false }] } })).toEqual(
    [],
  );
});

test('a unit of unknown draw is a doubt, by its name', () => {
  const unknownDraws = [{ kit: 'radio', before: true, after: true }];
  expect(findingsOf(drawNotKnown, { plan: { unknownDraws } })).toMatchObject([
    { level: 'doubt', about: ['radio'], says: expect.stringContaining('Old radio') },
  ]);
});
