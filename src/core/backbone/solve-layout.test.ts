import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aDevice, aGrade, aPlace, aProblem, aWay } from './a-problem.test-helper.ts';
import { bruteFirst, bruteLayout, bruteRankOf } from './brute-layout.test-helper.ts';
import { checkLayout } from './check-layout.ts';
import { fullWork } from './full-work.ts';
import { ladderBoat } from './ladder-boat.test-helper.ts';
import type { Layout, LayoutStep, Problem } from './problem.ts';
import { heuristicLayout, runnerUpLayout, solveLayout } from './solve-layout.ts';
import { tinyProblem } from './tiny-problem.test-helper.ts';

const enough = { work: 20_000 };
const lastLayout = (problem: Problem): Layout | undefined => [...solveLayout(problem, enough)].at(-1);
const teesAt = (layout: Layout | undefined, place: string): readonly string[] =>
  (layout?.walk ?? []).filter((step) => step.place === place).flatMap(({ tees }) => tees);

const bowToStern = aProblem({
  places: [aPlace('bow'), aPlace('helm'), aPlace('stern')],
  ways: [aWay({ id: 'fore', a: 'bow', b: 'helm', mm: 4000 }), aWay({ id: 'rear', a: 'helm', b: 'stern', mm: 5000 })],
  devices: [aDevice('compass.n2k', 'bow'), aDevice('display.n2k', 'helm'), aDevice('engine.n2k', 'stern')],
});

test('where drops cost more than trunk, the trunk runs from the first device to the last and each has its tee beside it', () => {
  const layout = lastLayout(bowToStern);
  expect(layout?.walk).toEqual([
    { place: 'bow', tees: ['compass.n2k'] },
    { place: 'helm', via: 'fore', tees: ['display.n2k', 'feed'] },
    { place: 'stern', via: 'rear', tees: ['engine.n2k'] },
  ]);
  // 9 m of trunk at 4.00, 3 drops of 0.3 m at 5.00, 4 tees, 2 terminators, the feed and 1 m of lead.
  expect(layout?.cost).toBe((9 * 400 + 0.9 * 500 + 4 * 2000 + 2 * 1500 + 3000 + 200) * 1000);
});

test('where drops are cheap, every tee stands at one place and the layout is proven', () => {
  const cheapDrops = { ...bowToStern, grades: [aGrade({ trunkPerM: 4000, dropPerM: 100 })] };
  const layout = lastLayout(cheapDrops);
  expect(layout?.walk.map(({ place }) => place)).toEqual(['helm']);
  expect(layout?.status).toBe('proven');
  expect(layout?.cost).toBe(layout?.bound);
});

test('a drop counts as the piece it is bought as: where the next longer piece is too long the trunk goes to the device', () => {
  const cheapDrops = { ...bowToStern, grades: [aGrade({ trunkPerM: 4000, dropPerM: 100 })] };
  expect(cheapDrops.limits.dropMm).toBe(6000);
  const walkWith = (pieces: readonly number[]) =>
    lastLayout({ ...cheapDrops, pieces: [...pieces] })?.walk.map(({ place }) => place);
  expect(walkWith([10_000, 500, 6000])).toEqual(['helm']);
  expect(walkWith([10_000, 500, 6001])).toEqual(['bow', 'helm', 'stern']);
  // to bow and stern are 4.3 and 5.3 m: pieces of just that are no longer
  expect(walkWith([10_000, 4300, 5300])).toEqual(['helm']);
});

const withFlybridge = aProblem({
  places: [aPlace('bow'), aPlace('fly'), aPlace('helm'), aPlace('stern')],
  ways: [...bowToStern.ways, aWay({ id: 'up', a: 'fly', b: 'helm', mm: 2000 })],
  devices: ['bow-1', 'bow-2', 'fly-1', 'fly-2', 'fly-3', 'stern-1', 'stern-2'].map((id) =>
    aDevice(`${id}.n2k`, id.slice(0, -2)),
  ),
});

test('a branch with many devices is served by running the trunk out and back, not by many drops', () => {
  const layout = lastLayout(withFlybridge);
  expect(layout?.walk.map(({ place }) => place)).toEqual(['bow', 'helm', 'fly', 'helm', 'stern']);
  expect(teesAt(layout, 'fly')).toEqual(expect.arrayContaining(['fly-1.n2k', 'fly-2.n2k', 'fly-3.n2k']));
});

test('the trunk never ends where nobody can reach the terminator', () => {
  const hardBow = {
    ...bowToStern,
    places: [aPlace('bow', { end: false }), aPlace('helm'), aPlace('stern')],
    limits: { ...bowToStern.limits, dropMm: 3000 },
  };
  const layout = lastLayout(hardBow);
  expect(layout?.walk.map(({ place }) => place)).toEqual(['helm', 'bow', 'helm', 'stern']);
  expect(teesAt(layout, 'bow')).toContain('compass.n2k');
});

test('the feed goes to the middle where volts at the far end would fall too low', () => {
  const hungry = {
    ...bowToStern,
    devices: [
      aDevice('compass.n2k', 'bow', { len: 15, minMv: 11_000 }),
      aDevice('engine.n2k', 'stern', { len: 15, minMv: 11_000 }),
    ],
    feed: {
      ...bowToStern.feed,
      reach: ['bow', 'helm', 'stern'].map((place, n) => ({ place, mm: 500 + 500 * n, maxMm: 500 + 500 * n })),
    },
  };
  expect(teesAt(lastLayout(hungry), 'helm')).toEqual(['feed']);
});

test('heavier cable is chosen only where the light one cannot carry the bus', () => {
  const grades = [aGrade(), aGrade({ id: 'mid', microOhmPerM: 14_200, maxMa: 8000, trunkPerM: 680, dropPerM: 750 })];
  expect(lastLayout({ ...bowToStern, grades })?.grade).toBe('light');
  const devices = bowToStern.devices.map((device) => ({ ...device, len: 35 }));
  expect(lastLayout({ ...bowToStern, grades, devices })?.grade).toBe('mid');
});

test('over the warn limit of length only where nothing else fits', () => {
  // From bow to stern is 9.6 m past the flybridge, 13.6 m by way of it.
  const grades = [aGrade({ warnMm: 12_000, failMm: 14_000 })];
  expect(lastLayout({ ...withFlybridge, grades })?.walk.map(({ place }) => place)).toEqual(['bow', 'helm', 'stern']);
  const limits = { ...withFlybridge.limits, dropMm: 2000 };
  expect(lastLayout({ ...withFlybridge, grades, limits })?.walk).toHaveLength(5);
});

test('where no layout keeps every limit, the one that breaks them least is given, and said to be none', () => {
  const limits = { ...bowToStern.limits, dropsMm: 500 };
  const layouts = [...solveLayout({ ...bowToStern, limits }, enough)];
  expect(layouts.map(({ status }) => status)).toEqual(['infeasible']);
  expect(layouts.flatMap((layout) => checkLayout({ ...bowToStern, limits }, layout).broken)).toEqual([
    'All drops are 0.9 m as bought; the limit is 0.5 m.',
  ]);
  expect(heuristicLayout({ ...bowToStern, limits })?.status).toBe('infeasible');
});

test('a device that no drop reaches is left without a tee, and a bus that no panel feeds without a feed', () => {
  const cutOff = {
    ...bowToStern,
    places: [...bowToStern.places, aPlace('tender', { tees: false, end: false })],
    devices: [...bowToStern.devices, aDevice('tender.n2k', 'tender')],
    feed: { ...bowToStern.feed, reach: [] },
  };
  const layout = lastLayout(cutOff);
  expect(layout?.status).toBe('infeasible');
  expect(layout === undefined ? [] : checkLayout(cutOff, layout).broken).toEqual([
    'No panel feeds this bus.',
    'tender.n2k has no tee.',
  ]);
});

test('a boat without a place for an end has no layout at all', () => {
  const places = bowToStern.places.map((place) => ({ ...place, end: false }));
  expect(lastLayout({ ...bowToStern, places })).toBeUndefined();
  expect(heuristicLayout({ ...bowToStern, places })).toBeUndefined();
});

test('the quick layout of a plan says that it is one', () => {
  expect(heuristicLayout(bowToStern)?.status).toBe('heuristic');
});

/** Whether trying everything takes a moment only. */
const isQuickToTry = ({ ways, devices }: Problem): boolean => ways.length * devices.length <= 6;

test('on two thousand tiny boats the layout is the cheapest of all, proven, or there is none', () => {
  let boats = 0;
  fc.assert(
    fc.property(tinyProblem.filter(isQuickToTry), (problem) => {
      const layouts = [...solveLayout(problem, { work: 2500 })];
      const optimum = bruteLayout(problem);
      const least = optimum?.cost ?? Number.POSITIVE_INFINITY;
      let before = { cost: Number.POSITIVE_INFINITY, bound: -1 };
      for (const layout of layouts) {
        expect(layout.bound).toBeLessThanOrEqual(least);
        const { cost, broken } = checkLayout(problem, layout);
        expect(cost).toBe(layout.cost);
        expect(broken.length > 0).toBe(layout.status === 'infeasible');
        expect(layout.status === 'proven').toBe(layout.cost === layout.bound && layout.status !== 'infeasible');
        expect(cost < before.cost || (cost === before.cost && layout.bound > before.bound)).toBe(true);
        before = layout;
      }
      const last = layouts.at(-1);
      if (optimum === undefined) {
        expect(last?.status ?? 'infeasible').toBe('infeasible');
        return;
      }
      boats += 1;
      expect(last).toMatchObject({ status: 'proven', cost: optimum.cost });
    }),
    { numRuns: 2000, seed: 7 },
  );
  expect(boats).toBeGreaterThan(1000);
}, 60_000);

/** A walk over the ways of a boat, as far as it can go without passing a way twice. */
const heldWalk = ({ places, ways }: Problem): LayoutStep[] => {
  const walk: LayoutStep[] = [{ place: places[0]?.id ?? '', tees: [] }];
  for (const { id, a, b } of ways) {
    const here = walk.at(-1)?.place;
    if (a === here || b === here) walk.push({ place: a === here ? b : a, via: id, tees: [] });
  }
  return walk;
};

test('trunk that is kept is used and costs nothing, on five hundred tiny boats', () => {
  let boats = 0;
  fc.assert(
    fc.property(tinyProblem.filter(isQuickToTry), (boat) => {
      const problem = { ...boat, held: heldWalk(boat) };
      const last = [...solveLayout(problem, { work: 2500 })].at(-1);
      const optimum = bruteLayout(problem);
      if (optimum === undefined) {
        expect(last?.status ?? 'infeasible').toBe('infeasible');
        return;
      }
      boats += 1;
      expect(last).toMatchObject({ status: 'proven', cost: optimum.cost });
      expect(last === undefined ? ['none'] : checkLayout(problem, last).broken).toEqual([]);
    }),
    { numRuns: 500, seed: 11 },
  );
  expect(boats).toBeGreaterThan(100);
}, 60_000);

/** The same boat with lengths so even that many layouts cost the same. */
const evenBoat = (problem: Problem): Problem => ({
  ...problem,
  ways: problem.ways.map((way) => ({
    ...way,
    mm: way.mm > 2000 ? 2000 : 1000,
    maxMm: way.mm > 2000 ? 2000 : 1000,
    extra: 0,
  })),
  devices: problem.devices.map((device) => ({ ...device, tailMm: 300, maxTailMm: 300 })),
  grades: problem.grades.slice(0, 1).map((grade) => ({ ...grade, dropPerM: grade.trunkPerM, failMm: grade.warnMm })),
  feed: { ...problem.feed, reach: problem.feed.reach.map((entry) => ({ ...entry, mm: 1000, maxMm: 1000 })) },
});

test('of layouts that cost the same the first in rank is given, on three hundred tiny boats', () => {
  let boats = 0;
  fc.assert(
    fc.property(tinyProblem.filter(isQuickToTry).map(evenBoat), (problem) => {
      const last = [...solveLayout(problem, { work: 20_000 })].at(-1);
      const first = bruteFirst(problem);
      expect(last === undefined || last.status === 'infeasible' ? [] : checkLayout(problem, last).broken).toEqual([]);
      if (first === undefined || last?.status !== 'proven') return;
      boats += 1;
      expect(bruteRankOf(problem, last)).toEqual(first);
    }),
    { numRuns: 300, seed: 5 },
  );
  expect(boats).toBeGreaterThan(150);
}, 60_000);

test('a turn into a blind end and back parts two devices at one place into two legs', () => {
  const problem = aProblem({
    places: [aPlace('bow', { tees: false }), aPlace('helm'), aPlace('stern')],
    ways: [aWay({ id: 'fore', a: 'bow', b: 'helm', mm: 1400 }), aWay({ id: 'rear', a: 'helm', b: 'stern', mm: 4000 })],
    devices: [
      aDevice('chart.n2k', 'helm', { len: 4 }),
      aDevice('radio.n2k', 'helm', { len: 3 }),
      aDevice('rudder.n2k', 'stern', { len: 2 }),
    ],
    grades: [aGrade({ maxMa: 400, trunkPerM: 200 })],
  });
  expect(lastLayout(problem)?.cost).toBe(bruteLayout(problem)?.cost);
  expect(lastLayout(problem)?.walk.map(({ place }) => place)).toContain('bow');
});

test('the runner-up takes other ways, and is the cheapest that does', () => {
  const layout = lastLayout(bowToStern);
  const second = layout && runnerUpLayout(bowToStern, layout, enough);
  expect(second?.status).toBe('proven');
  expect(second?.walk.map(({ place }) => place)).toEqual(['helm', 'stern']);
  // 4 m of trunk less, 4 m of drop more.
  expect(second?.cost).toBe((layout?.cost ?? 0) + 4 * (500 - 400) * 1000);
  expect(second && checkLayout(bowToStern, second).broken).toEqual([]);
  expect(second && runnerUpLayout(bowToStern, second, enough)?.cost).toBe(layout?.cost);
});

test('a search cut short still gives a layout, and says that it is not proven', () => {
  const problem = ladderBoat(16, { places: 35, devices: 25 });
  const layout = [...solveLayout(problem, { work: 5000 })].at(-1);
  expect(layout?.status).toBe('gap');
  expect(layout?.bound).toBeLessThan(layout?.cost ?? 0);
  expect(layout === undefined ? ['none'] : checkLayout(problem, layout).broken).toEqual([]);
});

test('running through a way three times never makes a layout cheaper than twice', () => {
  const few = tinyProblem.filter(({ ways, devices }) => ways.length <= 3 && devices.length <= 2);
  fc.assert(
    fc.property(few, (problem) => {
      expect(bruteLayout(problem, { timesMore: 1 })).toEqual(bruteLayout(problem));
    }),
    { numRuns: 25, seed: 3 },
  );
});

test('equal problem and budget give equal layouts, however small the budget', () => {
  fc.assert(
    fc.property(tinyProblem, fc.integer({ min: 1, max: 400 }), (problem, work) => {
      expect([...solveLayout(problem, { work })]).toEqual([...solveLayout(problem, { work })]);
    }),
    { numRuns: 40 },
  );
});

test('however soon a search has to stop, nothing it says is cheaper than the cheapest or bound above it', () => {
  fc.assert(
    fc.property(tinyProblem.filter(isQuickToTry), fc.integer({ min: 1, max: 120 }), (problem, work) => {
      const least = bruteLayout(problem)?.cost ?? Number.POSITIVE_INFINITY;
      for (const layout of solveLayout(problem, { work })) {
        const { cost, broken } = checkLayout(problem, layout);
        expect(cost).toBe(layout.cost);
        expect(broken.length > 0).toBe(layout.status === 'infeasible');
        expect(layout.bound).toBeLessThanOrEqual(least);
        if (layout.status === 'proven') expect(cost).toBe(least);
      }
    }),
    { numRuns: 250, seed: 13 },
  );
});

test.each([
  [{ places: 35, devices: 25 }, [0, 2, 3, 5, 7, 9, 10, 11]],
  [{ places: 60, devices: 40 }, [1, 2, 6, 7, 8, 9, 13, 17]],
])('boats of %o are proven within a small part of the full work', (size, seeds) => {
  for (const seed of seeds) {
    const problem = ladderBoat(seed, size);
    const layout = [...solveLayout(problem, fullWork)].at(-1);
    expect(layout?.status).toBe('proven');
    expect(layout === undefined ? ['none'] : checkLayout(problem, layout).broken).toEqual([]);
    expect(layout?.work).toBeLessThan(25_000);
  }
});
