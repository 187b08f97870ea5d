import { expect, test } from 'vitest';
import { aCompassBoat } from '../../compass-boat.test-helper.ts';
import { compassFindings } from './compass-case.test-helper.ts';
import { plateNotRead } from './plate-not-read.ts';

const unread = { safeM: 1, safeBy: 'taken', tooNear: true } as const;

test('a unit with a distance on its sheet passes', () => {
  expect(compassFindings(plateNotRead)).toEqual([]);
});

test('a new unit without one is a doubt, held against the metre taken where nothing is known', () => {
  expect(compassFindings(plateNotRead, { unit: unread })).toMatchObject([
    { level: 'doubt', about: ['card', 'display'], measured: { value: 0.5 }, limit: { value: 1, unit: 'm' } },
  ]);
});

test('what stood there when the compass was swung is not spoken of', () => {
  const boat = aCompassBoat().unit('display', { fate: 'stays' }).boat;
  expect(compassFindings(plateNotRead, { boat, unit: unread })).toEqual([]);
});
