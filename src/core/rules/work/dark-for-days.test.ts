import { expect, test } from 'vitest';
import { darkForDays } from './dark-for-days.ts';
import { foundIn } from './work-case.test-helper.ts';

const order = (days: number, hoursH: number) => ({
  hash: '',
  starts: [{ job: 'take-out:radio', day: 0, slot: 0, lastDay: 0, lastSlot: 2, hands: [] }],
  dark: [{ function: 'depth' as const, from: { day: 0, slot: 0 }, to: { day: days, slot: 4 }, hoursH }],
  cost: { darkH: hoursH, lastDay: 8, ascents: 0 },
  bound: { darkH: 0, lastDay: 0, ascents: 0 },
  status: 'quick' as const,
  work: 0,
});
const functions = [
  { function: 'depth' as const, hard: false, ways: [{ by: ['radio'], from: [], until: ['take-out:radio'] }] },
];

test('depth gone for five days is a fault, with the job that put it out, the days and what stands in', () => {
  expect(foundIn(darkForDays, { order: order(5, 40), functions })).toMatchObject([
    {
      level: 'fault',
      about: ['take-out:radio'],
      measured: { value: 5, unit: 'days' },
      limit: { value: 3, unit: 'days' },
      says: expect.stringContaining('Depth is dark from 2027-03-01 to 2027-03-06: 5 days, 40 hours'),
    },
  ]);
});

test('three days are none, nor are days on which it does not count', () => {
  expect(foundIn(darkForDays, { order: order(3, 24), functions })).toEqual([]);
  expect(foundIn(darkForDays, { order: order(5, 0), functions })).toEqual([]);
});
