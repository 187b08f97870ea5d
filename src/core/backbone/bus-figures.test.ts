import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { busLimits } from '../facts/bus-limits.ts';
import { busFigures } from './bus-figures.ts';
import type { Layout, LayoutStep, Problem } from './problem.ts';

interface Stop {
  /** metres from the stop before */
  readonly afterM: number;
  readonly dropM: number;
  readonly len: number;
}

const mm = (metres: number): number => Math.round(metres * 1000);

/** A straight trunk with one place a stop, every device standing at its tee with the drop as its tail. */
const straight = ({
  stops,
  feedAt,
  leadM = 2,
  leadMicroOhmPerM = 13_200,
  microOhmPerM = 57_000,
  mv = 12_000,
  pieces = [],
  tailM = 0,
}: {
  readonly stops: readonly Stop[];
  readonly feedAt?: number;
  readonly leadM?: number;
  readonly leadMicroOhmPerM?: number;
  readonly microOhmPerM?: number;
  readonly mv?: number;
  readonly pieces?: readonly number[];
  /** bare trunk after the last stop */
  readonly tailM?: number;
}): { problem: Problem; layout: Layout } => {
  const all = tailM === 0 ? stops : [...stops, { afterM: tailM, dropM: 0, len: 0 }];
  const place = (n: number): string => `p${n}`;
  const walk = all.map(({ len }, n): LayoutStep => {
    const tees = [...(len > 0 ? [`d${n}.n2k`] : []), ...(feedAt === n ? ['feed'] : [])];
    return { place: place(n), tees, ...(n === 0 ? {} : { via: `w${n}` }) };
  });
  const problem: Problem = {
    format: 1,
    hash: 'h',
    bus: 'nav',
    places: all.map((_, n) => ({ id: place(n), tees: true, end: true, spares: 0 })),
    ways: all.slice(1).map(({ afterM }, n) => ({
      id: `w${n + 1}`,
      a: place(n),
      b: place(n + 1),
      mm: mm(afterM) - 100,
      maxMm: mm(afterM),
      trunk: 2,
      drop: true,
      extra: 0,
    })),
    devices: all.flatMap(({ len, dropM }, n) => {
      if (len === 0) return [];
      const maxTailMm = mm(dropM);
      return [{ id: `d${n}.n2k`, place: place(n), tailMm: maxTailMm - 50, maxTailMm, len, minMv: 9000 }];
    }),
    grades: [{ id: 'light', warnMm: 100_000, failMm: 100_000, microOhmPerM, maxMa: 3000, trunkPerM: 1, dropPerM: 1 }],
    limits: { dropMm: 6000, dropsMm: 78_000, devices: 50 },
    pieces,
    prices: { tee: 1, terminator: 1, feed: 1 },
    feed: {
      mv,
      leadPerM: 1,
      leadMicroOhmPerM,
      reach: all.map((_, n) => ({ place: place(n), mm: mm(leadM), maxMm: mm(leadM) })),
    },
  };
  return { problem, layout: { problem: 'h', grade: 'light', walk, cost: 0, bound: 0, status: 'heuristic', work: 0 } };
};

const entryOf = ({ problem, layout }: { problem: Problem; layout: Layout }) => busFigures(problem, layout).entry;

const expectNear = (figures: readonly number[], expected: readonly number[]): void => {
  expect(figures).toHaveLength(expected.length);
  for (const [n, figure] of figures.entries()) expect(Math.abs(figure - (expected[n] ?? 99))).toBeLessThan(0.0005);
};

const bow14m: readonly Stop[] = [
  { afterM: 0, dropM: 2, len: 3 },
  { afterM: 3, dropM: 3, len: 2 },
  { afterM: 3, dropM: 6, len: 1 },
  { afterM: 0.5, dropM: 2, len: 1 },
  { afterM: 1.5, dropM: 3, len: 4 },
  { afterM: 4, dropM: 1, len: 2 },
  { afterM: 2, dropM: 4, len: 1 },
];

describe('lengths of a bus', () => {
  test('BB-01, 93 m of trunk with 5 m drops 1 m from each end is 101 m long for the bus, over 100 m (Real Time Automation, DeviceNet cabling note)', () => {
    const stops = [
      { afterM: 0, dropM: 0, len: 0 },
      { afterM: 1, dropM: 5, len: 1 },
      { afterM: 91, dropM: 5, len: 1 },
    ];
    const entry = entryOf(straight({ stops, tailM: 1 }));
    expect(entry.longestM).toBe(93);
    expect(entry.farthestM).toBe(101);
    expect(entry.farthestM).toBeGreaterThan(busLimits['nmea2000-trunk-light-fail'].value);
  });

  test('BB-02, drops of 2, 2, 1, 1, 3, 4 and 4 m are 17 m together (Epson, fieldbus I/O manual rev 6, p 15)', () => {
    const stops = [2, 2, 1, 1, 3, 4, 4].map((dropM): Stop => ({ afterM: 1, dropM, len: 1 }));
    const entry = entryOf(straight({ stops }));
    expect(entry.dropsM).toBe(17);
    expect(entry.longestDropM).toBe(4);
    expect(entry.drops[0]).toEqual({ port: 'd0.n2k', lengthM: 1.95, boughtM: 2 });
  });

  test('BB-03, thirteen drops of 6 m are at both limits; 0.1 m more is over (several public installation handbooks agree)', () => {
    const six = Array.from({ length: 13 }, (): Stop => ({ afterM: 1, dropM: 6, len: 1 }));
    const entry = entryOf(straight({ stops: six }));
    expect(entry.longestDropM).toBe(busLimits['nmea2000-one-drop'].value);
    expect(entry.dropsM).toBe(busLimits['nmea2000-all-drops'].value);
    const more = entryOf(straight({ stops: [...six, { afterM: 1, dropM: 0.1, len: 1 }] }));
    expect(more.dropsM).toBeGreaterThan(busLimits['nmea2000-all-drops'].value);
  });

  test('BB-04, 100 m of thick and 50 m of thin trunk count 225 m of 250 m (Toshiba, 2000-series DeviceNet module manual 6F8C0845, table 1-3)', () => {
    const weightedM = 100 + busLimits['nmea2000-trunk-mixed-thin-factor'].value * 50;
    expect(weightedM).toBe(225);
    expect(weightedM).toBeLessThanOrEqual(busLimits['nmea2000-trunk-mixed'].value);
  });

  test('BB-06, fifty devices are the most (several public installation handbooks agree)', () => {
    const count = (devices: number): number =>
      entryOf(straight({ stops: Array.from({ length: devices }, (): Stop => ({ afterM: 1, dropM: 1, len: 2 })) }))
        .devices;
    expect(count(50)).toBe(busLimits['nmea2000-devices'].value);
    expect(count(51)).toBeGreaterThan(busLimits['nmea2000-devices'].value);
  });

  test('a drop is bought as the shortest piece that covers it at its longest, or made to length where none does', () => {
    const stops = [0.5, 0.6, 2, 5.5].map((dropM): Stop => ({ afterM: 1, dropM, len: 1 }));
    const entry = entryOf(straight({ stops, pieces: [500, 1000, 2000, 5000] }));
    expect(entry.drops.map(({ boughtM }) => boughtM)).toEqual([0.5, 1, 2, 5.5]);
  });

  test('a drop from a tee elsewhere takes the shortest way there, and the tail; one no drop reaches is left out', () => {
    const { problem, layout } = straight({
      stops: [1, 1, 1].map((dropM): Stop => ({ afterM: 3, dropM, len: 1 })),
      feedAt: 0,
    });
    const walk = layout.walk.map((step, n) => ({
      ...step,
      tees: n === 0 ? ['d0.n2k', 'd1.n2k', 'd2.n2k', 'feed'] : [],
    }));
    const noWay = problem.ways.map((way) => (way.id === 'w2' ? { ...way, drop: false } : way));
    const { entry } = busFigures({ ...problem, ways: noWay }, { ...layout, walk });
    expect(entry.drops).toEqual([
      { port: 'd0.n2k', lengthM: 0.95, boughtM: 1 },
      { port: 'd1.n2k', lengthM: 3.85, boughtM: 4 },
    ]);
    expect(entry.devices).toBe(3);
    expect(entry.volts.map(({ port }) => port)).toEqual(['d0.n2k', 'd1.n2k', 'd2.n2k']);
  });

  test('a trunk that runs out and back passes a place twice, and it matters on which pass a tee sits', () => {
    const { problem, layout } = straight({ stops: [0, 10, 10].map((afterM): Stop => ({ afterM, dropM: 1, len: 1 })) });
    const back = (tees: readonly string[][]): Layout => ({
      ...layout,
      walk: ['p0', 'p1', 'p2', 'p1'].map((place, n) => ({
        place,
        tees: tees[n] ?? [],
        ...(n === 0 ? {} : { via: ['w1', 'w2', 'w2'][n - 1] ?? '' }),
      })),
    });
    const onWayOut = busFigures(problem, back([['d0.n2k'], ['d1.n2k'], ['d2.n2k'], []])).entry;
    const onWayBack = busFigures(problem, back([['d0.n2k'], [], ['d2.n2k'], ['d1.n2k']])).entry;
    expect(onWayOut).toMatchObject({ longestM: 30, lengthM: 29.7, farthestM: 31, ends: ['p0', 'p1'] });
    expect(onWayBack.farthestM).toBe(32);
  });
});

describe('volts of a bus', () => {
  test('BB-10, fed at its first tee over 2 m of the same cable (a boat-equipment maker’s handbook, name withheld; arithmetic redone)', () => {
    const stops = [
      { afterM: 0, dropM: 2, len: 4 },
      { afterM: 20, dropM: 6, len: 5 },
      { afterM: 10, dropM: 6, len: 7 },
    ];
    const entry = entryOf(straight({ stops, feedAt: 0, microOhmPerM: 53_000, leadMicroOhmPerM: 53_000 }));
    expectNear(
      entry.volts.map(({ dropV }) => dropV),
      [0.212, 1.6006, 2.0352],
    );
    expectNear([entry.thumbDropV ?? 0], [3.2224]);
    expect(entry).toMatchObject({ len: 16, supplyV: 12, feedPlace: 'p0' });
  });

  test('BB-11, a 14 m boat fed at the bow end (computed)', () => {
    const { problem, layout } = straight({ stops: bow14m, feedAt: 0 });
    const { entry, legs } = busFigures(problem, layout);
    expectNear(
      entry.volts.map(({ dropV }) => dropV),
      [0.0712, 0.2593, 0.4132, 0.4132, 0.53, 0.5414, 0.5642],
    );
    expect(entry.volts.every(({ lowestV, dropV }) => Math.abs(lowestV + dropV - 12) < 1e-12)).toBe(true);
    expect(legs).toEqual([
      { towards: 'start', len: 3, amps: 0.15, ampMetres: 0 },
      {
        towards: 'end',
        len: 14,
        amps: 0.7,
        ampMetres: expect.closeTo(0.05 * (2 * 3 + 6 + 6.5 + 4 * 8 + 2 * 12 + 14), 9),
      },
    ]);
  });

  test('fed in the middle it loses less, each side is a leg, and the device at the feed loads both', () => {
    const { problem, layout } = straight({ stops: bow14m, feedAt: 4 });
    const { entry, legs } = busFigures(problem, layout);
    const worstV = Math.max(...entry.volts.map(({ dropV }) => dropV));
    expect(worstV).toBeLessThan(0.5642);
    expect(legs.map(({ len }) => len)).toEqual([3 + 2 + 1 + 1 + 4, 4 + 2 + 1]);
  });

  test('each stretch of trunk carries what hangs beyond it, and beside the feed the most', () => {
    const { problem, layout } = straight({ stops: bow14m, feedAt: 4 });
    const { entry } = busFigures(problem, layout);
    expect(entry.along?.map(({ carriesLen }) => carriesLen)).toEqual([undefined, 3, 5, 6, 7, 3, 1]);
    expect(entry.along?.at(-1)?.alongM).toBeCloseTo(entry.lengthM, 9);
    expect(entryOf(straight({ stops: bow14m })).along?.every(({ carriesLen }) => carriesLen === undefined)).toBe(true);
  });

  test('without a feed there are no volts; with more load than the cable can carry every device reads none', () => {
    expect(entryOf(straight({ stops: bow14m }))).toMatchObject({ volts: [] });
    expect(entryOf(straight({ stops: bow14m }))).not.toHaveProperty('supplyV');
    const heavy = entryOf(
      straight({
        stops: [
          { afterM: 0, dropM: 0, len: 1 },
          { afterM: 100, dropM: 6, len: 40 },
        ],
        feedAt: 0,
      }),
    );
    expect(heavy.volts.map(({ lowestV }) => lowestV)).toEqual([0, 0]);
  });
});

const stopLists = fc.array(
  fc.record({
    afterM: fc.integer({ min: 1, max: 80 }).map((tenths) => tenths / 10),
    dropM: fc.integer({ min: 1, max: 60 }).map((tenths) => tenths / 10),
    len: fc.integer({ min: 1, max: 3 }),
  }),
  { minLength: 1, maxLength: 8 },
);

describe('any straight bus', () => {
  test('has the volts of the ladder formula 2 R shared I + 2 R drop I + lead, wherever it is fed', () => {
    fc.assert(
      fc.property(stopLists, fc.nat(), (stops, which) => {
        const feedAt = which % stops.length;
        const entry = entryOf(straight({ stops, feedAt }));
        const atM = stops.map((_, n) => stops.slice(1, n + 1).reduce((sum, { afterM }) => sum + afterM, 0));
        const away = atM.map((m) => m - (atM[feedAt] ?? 0));
        const leadV = 2 * 2 * 0.0132 * 0.05 * stops.reduce((sum, { len }) => sum + len, 0);
        for (const [k, { dropM, len }] of stops.entries()) {
          let dropV = leadV + 2 * 0.057 * dropM * 0.05 * len;
          for (const [j, other] of stops.entries()) {
            const [one, two] = [away[k] ?? 0, away[j] ?? 0];
            const sharedM = one * two > 0 ? Math.min(Math.abs(one), Math.abs(two)) : 0;
            dropV += 2 * 0.057 * sharedM * 0.05 * other.len;
          }
          expect(entry.volts[k]?.dropV).toBeCloseTo(dropV, 9);
        }
        const thumbV = entry.thumbDropV ?? 0;
        if (feedAt === 0) for (const { dropV } of entry.volts) expect(thumbV).toBeGreaterThanOrEqual(dropV - 1e-9);
      }),
    );
  });

  test('is at least as long as its trunk for the bus, and the same walked from the other end', () => {
    fc.assert(
      fc.property(stopLists, fc.nat(), (stops, which) => {
        const { problem, layout } = straight({ stops, feedAt: which % stops.length });
        const there = busFigures(problem, layout).entry;
        const walk = layout.walk.toReversed().map(({ place, tees }, n): LayoutStep => {
          const via = layout.walk.toReversed()[n - 1]?.via;
          return via === undefined ? { place, tees } : { place, via, tees };
        });
        const back = busFigures(problem, { ...layout, walk }).entry;
        expect(there.farthestM).toBeGreaterThanOrEqual(there.longestM);
        expect(back.farthestM).toBeCloseTo(there.farthestM, 9);
        expect(back.ends).toEqual(there.ends.toReversed());
        expect(back.drops).toEqual(there.drops);
        for (const [n, { lowestV }] of back.volts.entries())
          expect(lowestV).toBeCloseTo(there.volts[n]?.lowestV ?? 0, 9);
      }),
    );
  });
});
