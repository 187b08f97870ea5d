import { expect, test } from 'vitest';
import { aDevice, aGrade, aPlace, aProblem, aWay } from './a-problem.test-helper.ts';
import { checkLayout } from './check-layout.ts';
import type { Layout, LayoutStep, Problem } from './problem.ts';

/**
 * 30 m of trunk fed 10 m from its start, where a device hangs too; 1 A in all. By a pencil, at 0.05 ohm a metre:
 * d2 loses 2 x 0.05 x (20 m x 0.5 A + 2 m x 0.5 A) = 1.1 V, d0 2 x 0.05 x (10 m x 0.2 A + 3 m x 0.2 A) = 0.26 V,
 * d1 2 x 0.05 x 1 m x 0.3 A = 0.03 V, and each the 2 x 0.01 x 2 m x 1 A = 0.04 V of the lead.
 */
const atItsLimits = aProblem({
  places: ['p0', 'p1', 'p2'].map((id) => aPlace(id)),
  ways: [
    aWay({ id: 'w0', a: 'p0', b: 'p1', mm: 10_000, trunk: 1 }),
    aWay({ id: 'w1', a: 'p1', b: 'p2', mm: 20_000, trunk: 1 }),
  ],
  devices: [
    aDevice('d0.n2k', 'p0', { len: 4, tailMm: 3000, minMv: 11_700 }),
    aDevice('d1.n2k', 'p1', { len: 6, tailMm: 1000, minMv: 11_930 }),
    aDevice('d2.n2k', 'p2', { len: 10, tailMm: 2000, minMv: 10_860 }),
  ],
  grades: [aGrade({ microOhmPerM: 50_000, warnMm: 35_000, failMm: 35_000, maxMa: 800 })],
  limits: { dropMm: 3000, dropsMm: 6000, devices: 3 },
  feed: {
    mv: 12_000,
    lostMv: { warn: 1140, fail: 1140 },
    leadPerM: 200,
    leadMicroOhmPerM: 10_000,
    reach: [{ place: 'p1', mm: 2000, maxMm: 2000 }],
  },
});
const walk: readonly LayoutStep[] = [
  { place: 'p0', tees: ['d0.n2k'] },
  { place: 'p1', via: 'w0', tees: ['d1.n2k', 'feed'] },
  { place: 'p2', via: 'w1', tees: ['d2.n2k'] },
];
const back: readonly LayoutStep[] = [
  { place: 'p2', tees: ['d2.n2k'] },
  { place: 'p1', via: 'w1', tees: ['d1.n2k', 'feed'] },
  { place: 'p0', via: 'w0', tees: ['d0.n2k'] },
];
const [grade = aGrade()] = atItsLimits.grades;

/** What the checker has against these steps, their cost said rightly. */
const brokenOf = (problem: Problem, steps: readonly LayoutStep[] = walk): readonly string[] => {
  const said: Layout = {
    problem: problem.hash,
    grade: 'light',
    walk: steps,
    cost: 0,
    bound: 0,
    status: 'heuristic',
    work: 1,
  };
  return checkLayout(problem, { ...said, cost: checkLayout(problem, said).cost }).broken;
};

const devicesBut = (id: string, own: { minMv: number }): Partial<Problem> => ({
  devices: atItsLimits.devices.map((device) => (device.id === id ? { ...device, ...own } : device)),
});
const gradeBut = (own: Partial<typeof grade>): Partial<Problem> => ({ grades: [{ ...grade, ...own }] });

test('a layout that just keeps every limit of length, current and volts holds, walked from either end', () => {
  expect(brokenOf(atItsLimits)).toEqual([]);
  expect(brokenOf(atItsLimits, back)).toEqual([]);
});

test.each<[string, Partial<Problem>, string]>([
  [
    'the farthest pair',
    gradeBut({ failMm: 34_999 }),
    'From d0.n2k to d2.n2k is 35 m at its longest; the limit is 34.999 m.',
  ],
  [
    'one drop',
    { limits: { ...atItsLimits.limits, dropMm: 2999 } },
    'The drop to d0.n2k is 3 m as bought; the limit is 2.999 m.',
  ],
  [
    'all drops',
    { limits: { ...atItsLimits.limits, dropsMm: 5999 } },
    'All drops are 6 m as bought; the limit is 5.999 m.',
  ],
  ['devices', { limits: { ...atItsLimits.limits, devices: 2 } }, '3 devices are on the bus; the limit is 2.'],
  [
    'the current of a leg',
    gradeBut({ maxMa: 799 }),
    'One leg from the feed carries 800 mA; the limit for light cable is 799 mA.',
  ],
  [
    'what may be lost',
    { feed: { ...atItsLimits.feed, lostMv: { warn: 1139, fail: 1139 } } },
    '1.14 V are lost on the way to d2.n2k; the limit is 1.139 V.',
  ],
  [
    'what the far device needs',
    devicesBut('d2.n2k', { minMv: 10_861 }),
    'd2.n2k is left with 10.86 V; it needs 10.861 V.',
  ],
  [
    'what the device on the other leg needs',
    devicesBut('d0.n2k', { minMv: 11_701 }),
    'd0.n2k is left with 11.7 V; it needs 11.701 V.',
  ],
  [
    'what the device beside the feed needs',
    devicesBut('d1.n2k', { minMv: 11_931 }),
    'd1.n2k is left with 11.93 V; it needs 11.931 V.',
  ],
])('one step past the limit of %s is refused, and nothing else', (_, parts, says) => {
  expect(brokenOf({ ...atItsLimits, ...parts })).toEqual([says]);
  expect(brokenOf({ ...atItsLimits, ...parts }, back)).toEqual([
    says.replace('From d0.n2k to d2.n2k', 'From d2.n2k to d0.n2k'),
  ]);
});

test('fractions of a millivolt are not rounded away: 1140.001 mV are over 1140 mV', () => {
  const lead = [{ place: 'p1', mm: 2000, maxMm: 2001 }];
  const said = brokenOf({ ...atItsLimits, feed: { ...atItsLimits.feed, reach: lead } });
  expect(said).toContain('1.141 V are lost on the way to d2.n2k; the limit is 1.14 V.');
  expect(said).toContain('d2.n2k is left with 10.859 V; it needs 10.86 V.');
});

test('where nothing is said of what may be lost, only what each device needs counts', () => {
  const { lostMv: _, ...feed } = atItsLimits.feed;
  expect(brokenOf({ ...atItsLimits, feed })).toEqual([]);
});

test('ends of the trunk are points like devices: 30 m of trunk without drops are 30 m', () => {
  const bare = { ...atItsLimits, devices: [] };
  const steps = walk.map(({ tees: _, ...step }, n) => ({ ...step, tees: n === 1 ? ['feed'] : [] }));
  expect(brokenOf({ ...bare, ...gradeBut({ failMm: 30_000 }) }, steps)).toEqual([]);
  expect(brokenOf({ ...bare, ...gradeBut({ failMm: 29_999 }) }, steps)).toEqual([
    'From one end to the other end is 30 m at its longest; the limit is 29.999 m.',
  ]);
  const near = { ...bare, devices: atItsLimits.devices.slice(1, 2), ...gradeBut({ failMm: 1000 }) };
  const served = walk.map((step, n) => ({ ...step, tees: n === 1 ? step.tees : [] }));
  expect(brokenOf(near, served)).toEqual(['From one end to the other end is 30 m at its longest; the limit is 1 m.']);
});
