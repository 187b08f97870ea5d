import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { measureInFeet } from './measure-in-feet.ts';

const found = (draftM: number, airDraftM = 12) =>
  findingsOf(measureInFeet, {
    boat: aBoat().change(({ hull }) => {
      hull.draftM = draftM;
      hull.airDraft = { valueM: airDraftM, how: 'papers' };
    }).boat,
  });

test('a draft of 9.2 on a boat of 8.4 m must be feet (UN-07, our own rule)', () => {
  expect(found(9.2)).toMatchObject([
    { id: 'settings/measure-in-feet:draft', level: 'doubt', measured: { value: 9.2 } },
  ]);
  expect(found(4.9)[0]?.says).toContain('such boats have about');
});

test('an air draft of 40 on a sloop of 8.4 m must be feet too', () => {
  expect(found(1.5, 40)).toMatchObject([{ id: 'settings/measure-in-feet:air-draft' }]);
});

test('a usual draft, and a deep one, are none', () => {
  expect(found(1.5)).toEqual([]);
  expect(found(2.4)).toEqual([]);
});
