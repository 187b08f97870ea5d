import { expect, test } from 'vitest';
import { aBoat, type BoatBuilder } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import { makeRouter } from '../ways/routes.ts';
import { type BusLines, busLines } from './bus-lines.ts';
import { layoutProblems } from './layout-problems.ts';
import type { Layout, LayoutStep, Problem } from './problem.ts';
import { heuristicLayout } from './solve-layout.ts';

const linesOf = (walk: readonly LayoutStep[], builder: BoatBuilder = aBoat()): BusLines => {
  const index = indexBoat(builder.boat);
  const [problem] = layoutProblems(builder.boat);
  if (problem === undefined) throw new Error('the boat has no bus');
  const layout: Layout = {
    problem: problem.hash,
    grade: 'light',
    walk,
    cost: 0,
    bound: 0,
    status: 'heuristic',
    work: 0,
  };
  return busLines({ index, router: makeRouter(index), problem, layout });
};

const walk: readonly LayoutStep[] = [
  { place: 'mast-base', tees: ['compass.n2k'] },
  { place: 'helm', via: 'helm-mast', tees: ['display.n2k', 'spare@helm#1'] },
  { place: 'locker', via: 'locker-helm', tees: ['converter.n2k', 'feed', 'gnss.n2k'] },
];

test('the trunk is cut at its tees, and each stretch is named after what they serve', () => {
  const trunk = linesOf(walk).lines.filter(({ kind }) => kind === 'trunk');
  expect(trunk.map(({ id, lengthM, longestM }) => [id, lengthM, longestM])).toEqual([
    ['trunk:nav/compass.n2k~nav/display.n2k', 1.9, 2],
    ['trunk:nav/converter.n2k~nav/spare@helm#1', 2.2, 2.3],
  ]);
  expect(trunk[1]?.places).toEqual(['locker', 'helm']);
});

test('a kept trunk cable that lies from tee to tee is used as it lies', () => {
  const kept = aBoat().change((boat) => {
    boat.cables.push({
      id: 'old-trunk',
      kind: 'trunk',
      from: { place: 'helm' },
      to: { place: 'mast-base' },
      serves: 'nav',
      ways: ['helm-mast'],
      length: { valueM: 2.5, how: 'taped' },
      diameterMm: 6.5,
      condition: 'good',
      fate: 'stays',
    });
  });
  const trunk = linesOf(walk, kept).lines.filter(({ kind }) => kind === 'trunk');
  expect(trunk.map(({ kept: cables, lengthM }) => [cables, lengthM])).toEqual([
    [['old-trunk'], 2.5],
    [undefined, 2.2],
  ]);
});

test('a stretch runs on past a place without a tee, and an end without one is named after its place', () => {
  const bare = walk.map((step) => (step.place === 'locker' ? step : { ...step, tees: [] }));
  expect(linesOf(bare).lines.find(({ kind }) => kind === 'trunk')).toMatchObject({
    id: 'trunk:nav/converter.n2k~nav/end@mast-base',
    places: ['locker', 'helm', 'mast-base'],
    ways: ['locker-helm', 'helm-mast'],
    lengthM: 4.1,
  });
});

test('tees all at one place have no trunk between them', () => {
  expect(linesOf([{ place: 'helm', tees: ['compass.n2k', 'display.n2k'] }]).lines.map(({ kind }) => kind)).toEqual([
    'drop',
    'drop',
  ]);
});

test('a drop is the route from its tee to the device and the tail there', () => {
  const { lines, dropOf } = linesOf(walk);
  expect(lines.find(({ id }) => id === 'drop:gnss.bus~nav')).toEqual({
    id: 'drop:gnss.bus~nav',
    kind: 'drop',
    from: 'gnss.bus',
    to: 'nav',
    places: ['stern-rail', 'locker'],
    ways: ['locker-stern'],
    lengthM: 4.8,
    longestM: 4.9,
    guessed: false,
  });
  expect(dropOf.get('gnss.n2k')).toBe('drop:gnss.bus~nav');
  expect(new Set(dropOf.keys())).toEqual(new Set(['compass.n2k', 'converter.n2k', 'display.n2k', 'gnss.n2k']));
});

test('the feed runs from the panel to its tee', () => {
  const fed = walk.map((step) => ({
    ...step,
    tees: [...step.tees.filter((tee) => tee !== 'feed'), ...(step.place === 'helm' ? ['feed'] : [])],
  }));
  expect(linesOf(fed).lines.find(({ kind }) => kind === 'feed')).toMatchObject({
    id: 'feed:main-panel~nav',
    places: ['locker', 'helm'],
    lengthM: 2.7,
  });
});

test('a kept drop is used where its plug is named and it reaches the tee', () => {
  const keeping = (place: string) =>
    aBoat().with({
      cables: [
        {
          id: 'old-drop',
          kind: 'drop',
          from: { place },
          to: { place: 'stern-rail', at: 'gnss.bus' },
          serves: 'nav',
          ways: ['locker-stern'],
          length: { valueM: 5, how: 'taped', lessM: 0.1, moreM: 0.1 },
          diameterMm: 6,
          condition: 'good',
          fate: 'stays',
        },
      ],
    });
  const drop = (builder: BoatBuilder) => linesOf(walk, builder).lines.find(({ id }) => id === 'drop:gnss.bus~nav');
  expect(drop(keeping('locker'))).toMatchObject({ kept: ['old-drop'], lengthM: 5 });
  expect(drop(keeping('helm'))).not.toHaveProperty('kept');
});

test('a drop without a route is a gap', () => {
  const noDrops = aBoat().change((boat) => {
    for (const way of boat.ways) if (way.id === 'locker-stern') way.allows = ['trunk'];
  });
  expect(linesOf(walk, noDrops).gaps).toEqual([{ kind: 'drop', from: 'nav', to: 'gnss.bus', serves: ['nav'] }]);
});

test('the lengths of the lines of a bus add up to the trunk and the drops the layout was priced by', () => {
  const [problem] = layoutProblems(aBoat().boat);
  const layout = problem === undefined ? undefined : heuristicLayout(problem);
  if (problem === undefined || layout === undefined) throw new Error('the boat has a layout');
  const { lines } = linesOf(layout.walk);
  const sumMm = (kind: string): number =>
    lines.filter((line) => line.kind === kind).reduce((sum, { lengthM }) => sum + Math.round(lengthM * 1000), 0);
  const grade = problem.grades.find(({ id }) => id === layout.grade);
  const cable =
    sumMm('trunk') * (grade?.trunkPerM ?? 0) +
    sumMm('drop') * (grade?.dropPerM ?? 0) +
    sumMm('feed') * problem.feed.leadPerM;
  expect(layout.cost).toBe(cable + 1000 * partsCost(problem, layout));
});

const partsCost = ({ prices }: Problem, { walk: steps }: Layout): number =>
  steps.flatMap(({ tees }) => tees).length * prices.tee + 2 * prices.terminator + prices.feed;
