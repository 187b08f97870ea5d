import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Box, grown } from '../drawing/box.ts';
import type { Point } from '../drawing/point.ts';
import type { Room } from './label-room.ts';
import { type FaultCosts, faultsOf, mayStand, obstaclesIn, obstaclesNear } from './obstacles.ts';

const within: Box = { leftMm: 0, topMm: 0, rightMm: 100, bottomMm: 80 };
const empty: Room = { within, taken: [], runs: [], soft: [], points: [] };
const air = { airMm: 0.5, markMm: 1 };
const costs: FaultCosts = { leaderOverText: 10, leaderOverLine: 3, leaderNearPoint: 7, lineCovered: 2 };
const boxAt = (leftMm: number, topMm: number, widthMm = 10, heightMm = 4): Box => ({
  leftMm,
  topMm,
  rightMm: leftMm + widthMm,
  bottomMm: topMm + heightMm,
});

test('a box stands in the room, with air between it and all else', () => {
  const standsBeside = (own: Partial<Room>, box: Box, mayCoverLines = false): boolean =>
    mayStand(box, obstaclesIn({ ...empty, ...own }, air), mayCoverLines);
  expect(standsBeside({}, boxAt(90, 76))).toBe(true);
  expect(standsBeside({}, boxAt(90.1, 76))).toBe(false);
  expect(standsBeside({ taken: [boxAt(40, 40)] }, boxAt(50.5, 40))).toBe(true);
  expect(standsBeside({ taken: [boxAt(40, 40)] }, boxAt(50.4, 40))).toBe(false);
  expect(standsBeside({ points: [[38.5, 42]] }, boxAt(40, 40))).toBe(true);
  expect(standsBeside({ points: [[38.6, 42]] }, boxAt(40, 40))).toBe(false);
  const runs = [{ from: [39, 0] as const, to: [39, 80] as const, halfMm: 0.5 }];
  expect(standsBeside({ runs }, boxAt(40.1, 40))).toBe(true);
  expect(standsBeside({ runs }, boxAt(39.9, 40))).toBe(false);
  expect(standsBeside({ runs }, boxAt(39.9, 40), true)).toBe(true);
});

test('each fault costs what it is said to, and a leader may begin at its own mark', () => {
  const setting = { box: boxAt(40, 40), leader: [[20, 42] as const, [40, 42] as const] as const };
  const faults = (own: Partial<Room>): number => faultsOf(setting, obstaclesIn({ ...empty, ...own }, air), costs);
  expect(faults({ points: [[20, 42]] })).toBe(0);
  expect(faults({ points: [[30, 42.5]] })).toBe(7);
  expect(faults({ taken: [boxAt(25, 40)] })).toBe(10);
  expect(faults({ runs: [{ from: [30, 0], to: [30, 80], halfMm: 0 }] })).toBe(3);
  expect(faults({ runs: [{ from: [45, 0], to: [45, 80], halfMm: 0 }] })).toBeCloseTo(2 * 4);
  expect(faults({ soft: [{ from: [0, 41], to: [99, 41], costPerMm: 0.5 }] })).toBeCloseTo(0.5 * 10);
});

test('what is out of reach changes nothing', () => {
  const whole = (max: number) => fc.integer({ min: 0, max });
  const point: fc.Arbitrary<Point> = fc.tuple(whole(100), whole(80));
  const box = fc.tuple(whole(95), whole(75), whole(12), whole(9)).map((all) => boxAt(...all));
  const line = fc.record({ from: point, to: point });
  const room = fc.record({
    within: fc.constant(within),
    taken: fc.array(box, { maxLength: 4 }),
    runs: fc.array(
      line.map((one) => ({ ...one, halfMm: 0.4 })),
      { maxLength: 4 },
    ),
    soft: fc.array(
      line.map((one) => ({ ...one, costPerMm: 0.3 })),
      { maxLength: 3 },
    ),
    points: fc.array(point, { maxLength: 4 }),
  });
  fc.assert(
    fc.property(room, box, whole(8), (drawn, one, awayMm) => {
      const all = obstaclesIn(drawn, air);
      const leader = [
        [one.leftMm - awayMm, one.topMm],
        [one.leftMm, one.topMm],
      ] as const;
      const near = obstaclesNear(all, [grown(one, awayMm + 1)]);
      expect(mayStand(one, near)).toBe(mayStand(one, all));
      expect(faultsOf({ box: one, leader }, near, costs)).toBe(faultsOf({ box: one, leader }, all, costs));
    }),
  );
});
