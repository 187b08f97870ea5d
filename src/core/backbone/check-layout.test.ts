import { expect, test } from 'vitest';
import { aDevice, aGrade, aPlace, aProblem, aWay } from './a-problem.test-helper.ts';
import { checkLayout } from './check-layout.ts';
import type { Layout, LayoutStep, Problem } from './problem.ts';

const bow = aPlace('bow');
const helm = aPlace('helm', { spares: 1 });
const stern = aPlace('stern');
const seat = aPlace('seat', { tees: false, end: false });
const boat = aProblem({
  places: [bow, helm, seat, stern],
  ways: [
    aWay({ id: 'deckhead', a: 'bow', b: 'helm', mm: 4000, maxMm: 4200 }),
    aWay({ id: 'side', a: 'helm', b: 'stern', mm: 3000, maxMm: 3100, extra: 700 }),
    aWay({ id: 'well', a: 'helm', b: 'seat', mm: 1500, maxMm: 1600, trunk: 0 }),
  ],
  devices: [aDevice('compass.n2k', 'bow'), aDevice('display.n2k', 'seat', { tailMm: 600 })],
});
const walk: LayoutStep[] = [
  { place: 'bow', tees: ['compass.n2k'] },
  { place: 'helm', via: 'deckhead', tees: ['display.n2k', 'feed', 'spare@helm#1'] },
];
// 4 m of trunk at 4.00, drops of 0.3 m and 2.1 m at 5.00, 4 tees, 2 terminators, the feed and 1 m of lead, in hundredths.
const costHundredths = 4 * 400 + 2.4 * 500 + 4 * 2000 + 2 * 1500 + 3000 + 200;
const layout = (parts: Partial<Layout> = {}): Layout => ({
  problem: 'hash of this problem',
  grade: 'light',
  walk,
  cost: costHundredths * 1000,
  bound: 0,
  status: 'heuristic',
  work: 1,
  ...parts,
});
const broken = (parts: Partial<Layout>, problem: Problem = boat): readonly string[] =>
  checkLayout(problem, layout(parts)).broken;
const walked = (...steps: LayoutStep[]): readonly string[] => broken({ walk: steps });

test('a layout that holds breaks nothing and costs what a pencil says', () => {
  expect(checkLayout(boat, layout())).toEqual({ cost: costHundredths * 1000, broken: [] });
});

test('a layout that misstates its cost or its bound is found out', () => {
  const cost = costHundredths * 1000;
  expect(broken({ cost: cost - 1 })).toEqual([`The layout says it costs ${cost - 1}; it costs ${cost}.`]);
  expect(broken({ bound: cost + 1 })).toEqual([
    `The layout says nothing costs less than ${cost + 1}; it costs ${cost}.`,
  ]);
});

test('trunk that is kept costs nothing where it lies, and must be used', () => {
  const held: LayoutStep[] = [
    { place: 'bow', tees: [] },
    { place: 'helm', via: 'deckhead', tees: [] },
  ];
  expect(checkLayout({ ...boat, held }, layout()).cost).toBe((costHundredths - 4 * 400) * 1000);
  const [one] = walked({ place: 'helm', tees: ['compass.n2k', 'display.n2k', 'feed', 'spare@helm#1'] });
  const all: LayoutStep[] = [{ place: 'helm', tees: ['compass.n2k', 'display.n2k', 'feed', 'spare@helm#1'] }];
  expect(one).toMatch(/^The layout says it costs/);
  expect(broken({ walk: all }, { ...boat, held })).toEqual(['The trunk that lies in deckhead is not used.']);
});

test('using a way costs its hours each time the trunk runs through', () => {
  const outAndBack: LayoutStep[] = [
    ...walk,
    { place: 'stern', via: 'side', tees: [] },
    { place: 'helm', via: 'side', tees: [] },
  ];
  expect(checkLayout(boat, layout({ walk: outAndBack })).cost).toBe((costHundredths + 2 * 3 * 400 + 2 * 700) * 1000);
});

test('a walk must hang together, keep to ways that take the trunk, and not run through one too often', () => {
  expect(walked({ place: 'bow', tees: [] }, { place: 'stern', via: 'side', tees: [] })).toEqual([
    'No way side leads from bow to stern.',
  ]);
  expect(walked({ place: 'helm', tees: [] }, { place: 'seat', via: 'well', tees: [] })).toEqual([
    'The trunk runs 1 times through well; 0 is the most.',
    'The trunk may not end at seat.',
  ]);
  expect(walked()).toEqual(['The trunk passes no place.']);
});

test('every device, spare and the feed has exactly one tee, at a place that allows tees', () => {
  expect(
    walked(
      { place: 'bow', tees: ['compass.n2k', 'compass.n2k'] },
      { place: 'helm', via: 'deckhead', tees: ['horn.n2k'] },
    ),
  ).toEqual(
    expect.arrayContaining([
      'compass.n2k has 2 tees; it needs one.',
      'display.n2k has no tee.',
      'feed has no tee.',
      'spare@helm#1 has no tee.',
      'A tee serves horn.n2k, which is not on this bus.',
    ]),
  );
});

test('a wanted spare stands at its own place', () => {
  const [first, second] = walk;
  if (first === undefined || second === undefined) throw new Error('the walk has two steps');
  expect(
    walked({ ...first, tees: ['compass.n2k', 'spare@helm#1'] }, { ...second, tees: ['display.n2k', 'feed'] }),
  ).toContain('spare@helm#1 is not at helm.');
});

/** A straight trunk with a device of that LEN and drop at each distance from the start, fed at one of those points. */
const straight = (
  points: readonly (readonly [xM: number, len: number, dropM: number])[],
  { feedLeadM = 0, feedAt = 0, parts = {} }: { feedLeadM?: number; feedAt?: number; parts?: Partial<Problem> } = {},
): { problem: Problem; layout: Layout } => {
  const places = points.map((_, n) => aPlace(`p${n}`));
  const problem = aProblem({
    places,
    ways: points.slice(1).map(([xM], n) => {
      const mm = Math.round((xM - (points[n]?.[0] ?? 0)) * 1000);
      return aWay({ id: `w${n}`, a: `p${n}`, b: `p${n + 1}`, mm });
    }),
    devices: points.flatMap(([, len, dropM], n) =>
      len === 0 ? [] : [aDevice(`d${n}.n2k`, `p${n}`, { len, tailMm: dropM * 1000 })],
    ),
    feed: {
      mv: 12_000,
      leadPerM: 0,
      leadMicroOhmPerM: 13_200,
      reach: [{ place: `p${feedAt}`, mm: feedLeadM * 1000, maxMm: feedLeadM * 1000 }],
    },
    ...parts,
  });
  const steps = points.map(([, len], n): LayoutStep => {
    const tees = [...(len === 0 ? [] : [`d${n}.n2k`]), ...(n === feedAt ? ['feed'] : [])];
    return n === 0 ? { place: 'p0', tees } : { place: `p${n}`, via: `w${n - 1}`, tees };
  });
  const said = layout({ walk: steps, cost: 0 });
  return { problem, layout: { ...said, cost: checkLayout(problem, said).cost } };
};

test('BB-01: 93 m of trunk with 5 m drops 1 m from each end is 101 m, over 100 m', () => {
  const farthest = straight([
    [0, 0, 0],
    [1, 1, 5],
    [92, 1, 5],
    [93, 0, 0],
  ]);
  expect(checkLayout(farthest.problem, farthest.layout).broken).toContain(
    'From d1.n2k to d2.n2k is 101 m at its longest; the limit is 100 m.',
  );
});

test('BB-02, BB-03: drops add up, and 13 of 6 m are the most there may be', () => {
  const thirteen = straight(Array.from({ length: 13 }, (_, n) => [n, 1, 6] as const));
  expect(checkLayout(thirteen.problem, thirteen.layout).broken).toEqual([]);
  const more = straight([...Array.from({ length: 13 }, (_, n) => [n, 1, 6] as const), [13, 1, 0.1]]);
  expect(checkLayout(more.problem, more.layout).broken).toEqual(['All drops are 78.1 m as bought; the limit is 78 m.']);
  const long = straight([[0, 1, 6.001]]);
  expect(checkLayout(long.problem, long.layout).broken).toEqual([
    'The drop to d0.n2k is 6.001 m as bought; the limit is 6 m.',
  ]);
});

test('a drop counts as the ready-made piece that covers it: 2.1 m is bought as 5 m', () => {
  const limits = { dropMm: 4000, dropsMm: 78_000, devices: 50 };
  const bought = straight([[0, 1, 2.1]], { parts: { limits, pieces: [500, 1000, 2000, 5000] } });
  expect(checkLayout(bought.problem, bought.layout).broken).toEqual([
    'The drop to d0.n2k is 5 m as bought; the limit is 4 m.',
  ]);
});

test('BB-11: on a 14 m boat fed at the bow the last device loses 0.5642 V', () => {
  const points = [
    [0, 3, 2],
    [3, 2, 3],
    [6, 1, 6],
    [6.5, 1, 2],
    [8, 4, 3],
    [12, 2, 1],
    [14, 1, 4],
  ] as const;
  const { problem, layout: fed } = straight(points, { feedLeadM: 2 });
  const withLeast = (minMv: number): readonly string[] =>
    checkLayout({ ...problem, devices: problem.devices.map((device) => ({ ...device, minMv })) }, fed).broken;
  expect(withLeast(11_435)).toEqual([]);
  expect(withLeast(11_436)).toEqual(['d6.n2k is left with 11.435 V; it needs 11.436 V.']);
});

test('BB-30: 11 A over one leg of 8 A cable fails, split 5 A and 6 A it passes', () => {
  const heavy = { grades: [aGrade({ microOhmPerM: 100, maxMa: 8000 })] };
  const oneLeg = straight(
    [
      [0, 0, 0],
      [1, 100, 0],
      [2, 120, 0],
    ],
    { parts: heavy },
  );
  expect(checkLayout(oneLeg.problem, oneLeg.layout).broken).toEqual([
    'One leg from the feed carries 11000 mA; the limit for light cable is 8000 mA.',
  ]);
  const split = straight(
    [
      [0, 100, 0],
      [1, 0, 0],
      [2, 120, 0],
    ],
    { parts: heavy, feedAt: 1 },
  );
  expect(checkLayout(split.problem, split.layout).broken).toEqual([]);
});

test('BB-06: 51 devices are one too many', () => {
  const many = straight([[0, 1, 0]]);
  const devices = Array.from({ length: 51 }, (_, n) => aDevice(`d${n}.n2k`, 'p0', { tailMm: 0 }));
  expect(checkLayout({ ...many.problem, devices }, many.layout).broken).toContain(
    '51 devices are on the bus; the limit is 50.',
  );
});

test('a layout for another boat, another grade or without a feed is not accepted', () => {
  expect(broken({ problem: 'another' })).toEqual(['This layout was made for another state of the boat.']);
  expect(broken({ grade: 'heavy' })).toEqual(['Grade heavy is not allowed on this bus.']);
  expect(broken({}, { ...boat, feed: { ...boat.feed, reach: [] } })).toContain('No panel feeds this bus.');
});
