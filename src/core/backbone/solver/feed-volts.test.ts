import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aDevice, aGrade, aPlace, aProblem } from '../a-problem.test-helper.ts';
import { feedVolts, hungLoads } from './feed-volts.ts';
import { layGround } from './ground.ts';

type Point = readonly [xM: number, len: number, dropM: number];

/** Worst loss of volts and what is broken on a straight trunk with a device at each point, fed at one of them. */
const fedAt = (
  points: readonly Point[],
  {
    step,
    leadM,
    microOhmPerM,
    leadMicroOhmPerM,
  }: Record<'step' | 'leadM' | 'microOhmPerM' | 'leadMicroOhmPerM', number>,
): { worstV: number; violation: number } => {
  const problem = aProblem({
    places: [aPlace('any')],
    ways: [],
    devices: points.map(([, len], n) => aDevice(`d${n}.n2k`, 'any', { len, minMv: 9000 })),
    feed: { mv: 12_000, leadPerM: 0, leadMicroOhmPerM, reach: [] },
  });
  const ground = layGround({ problem, grade: aGrade({ microOhmPerM }), stretched: false });
  const tees = points.map(([, , dropM], n) => ({
    step: n,
    option: { place: 0, mm: dropM * 1000, boughtMm: dropM * 1000, cost: 0 },
  }));
  const ask = {
    ground,
    atMm: points.map(([xM]) => xM * 1000),
    loads: hungLoads(ground, { steps: points.length, tees }),
    step,
    lead: { place: 0, cost: 0, maxMm: leadM * 1000 },
  };
  const { worst = Number.NaN, violation = Number.NaN } = feedVolts(ask) ?? {};
  // Whoever asks for no more than is broken gets the same, and for less nothing.
  expect(feedVolts({ ...ask, most: violation })).toEqual({ worst, violation });
  expect(feedVolts({ ...ask, most: violation - 1 })).toBeUndefined();
  return { worstV: worst / 1e12, violation };
};

test('BB-10: LEN 4, 5 and 7 at 0, 20 and 30 m fed at the first lose 2.0352 V at worst', () => {
  const network: Point[] = [
    [0, 4, 2],
    [20, 5, 6],
    [30, 7, 6],
  ];
  const fed = fedAt(network, { step: 0, leadM: 2, microOhmPerM: 53_000, leadMicroOhmPerM: 53_000 });
  expect(fed.worstV).toBeCloseTo(2.0352, 4);
  expect(fed.violation).toBe(0);
});

const cruiser: Point[] = [
  [0, 3, 2],
  [3, 2, 3],
  [6, 1, 6],
  [6.5, 1, 2],
  [8, 4, 3],
  [12, 2, 1],
  [14, 1, 4],
];
const lead = { leadM: 2, microOhmPerM: 57_000, leadMicroOhmPerM: 13_200 };

test('BB-11: a 14 m boat fed at the bow loses 0.5642 V at worst', () => {
  // The table rounds the feed lead to 0.0370 V before it adds.
  expect(Math.abs(fedAt(cruiser, { step: 0, ...lead }).worstV - 0.5642)).toBeLessThan(0.0005);
});

test('a boat turned end for end loses as much', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 6 }), (step) => {
      const turned = cruiser.map(([xM, len, dropM]): Point => [14 - xM, len, dropM]).reverse();
      const there = fedAt(cruiser, { step, ...lead });
      expect(fedAt(turned, { step: 6 - step, ...lead })).toEqual(there);
    }),
  );
});

test('a load moved nearer the feed never raises the worst loss', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 0, max: 20 }), (from, len) => {
      const moved = (step: number) =>
        fedAt(
          cruiser.map(([xM], n): Point => [xM, n === step ? 1 + len : 1, 0]),
          { step: 0, ...lead },
        ).worstV;
      expect(moved(from - 1)).toBeLessThanOrEqual(moved(from) + 1e-12);
    }),
  );
});

test('BB-30: one leg of 11 A breaks a limit of 3 A by 8000 mA', () => {
  const heavy: Point[] = [
    [0, 0, 0],
    [1, 100, 0],
    [2, 120, 0],
  ];
  expect(fedAt(heavy, { step: 0, leadM: 0, microOhmPerM: 1, leadMicroOhmPerM: 1 }).violation).toBe(8000);
});

test('millivolts a device has too few count as broken, begun ones whole, and none at the limit itself', () => {
  // 2 x 0.05 ohm a metre x 10 m x 0.1 A of trunk and 2 x 0.05 x 1 m x 0.1 A of drop: 110 mV.
  const short = (minMv: number) => {
    const problem = aProblem({
      places: [aPlace('any')],
      ways: [],
      devices: [aDevice('near.n2k', 'any', { len: 2 }), aDevice('far.n2k', 'any', { len: 2, minMv })],
      feed: { mv: 12_000, leadPerM: 0, leadMicroOhmPerM: 0, reach: [] },
    });
    const ground = layGround({ problem, grade: aGrade({ microOhmPerM: 50_000 }), stretched: false });
    const option = { place: 0, mm: 1000, boughtMm: 1000, cost: 0 };
    const loads = hungLoads(ground, { steps: 2, tees: [undefined, { step: 1, option }] });
    const ask = { ground, atMm: [0, 10_000], loads, step: 0, lead: { place: 0, cost: 0, maxMm: 0 } };
    return [feedVolts(ask)?.violation, feedVolts({ ...ask, most: 0 })?.violation];
  };
  expect(short(11_890)).toEqual([0, 0]);
  expect(short(11_891)).toEqual([1, undefined]);
  expect(short(11_900)).toEqual([10, undefined]);
});

test('two devices on one step load it together', () => {
  const problem = aProblem({
    places: [aPlace('any')],
    ways: [],
    devices: ['one', 'other'].map((id) => aDevice(`${id}.n2k`, 'any', { len: 2 })),
    feed: { mv: 12_000, leadPerM: 0, leadMicroOhmPerM: 0, reach: [] },
  });
  const ground = layGround({ problem, grade: aGrade({ microOhmPerM: 50_000 }), stretched: false });
  const tee = { step: 1, option: { place: 0, mm: 0, boughtMm: 0, cost: 0 } };
  const loads = hungLoads(ground, { steps: 2, tees: [tee, tee] });
  expect([loads.loadMa, loads.allMa]).toEqual([[0, 200], 200]);
  const fed = feedVolts({ ground, atMm: [0, 10_000], loads, step: 0, lead: { place: 0, cost: 0, maxMm: 0 } });
  // 2 x 0.05 ohm a metre x 10 m x 0.2 A
  expect(fed?.worst).toBe(200e9);
});
