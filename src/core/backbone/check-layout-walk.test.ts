import { expect, test } from 'vitest';
import { aDevice, aGrade, aPlace, aProblem, aWay } from './a-problem.test-helper.ts';
import { checkLayout } from './check-layout.ts';
import type { Layout, LayoutStep, Problem } from './problem.ts';

/** Bow, helm and stern in a row, a locker beside the helm that takes no tee and no end. */
const boat = aProblem({
  places: [aPlace('bow'), aPlace('helm'), aPlace('locker', { tees: false, end: false }), aPlace('stern')],
  ways: [
    aWay({ id: 'fore', a: 'bow', b: 'helm', mm: 4000, trunk: 1 }),
    aWay({ id: 'rear', a: 'helm', b: 'stern', mm: 3000 }),
    aWay({ id: 'side', a: 'helm', b: 'locker', mm: 1000 }),
  ],
  devices: [aDevice('compass.n2k', 'bow')],
});
const at = (place: string, via?: string, ...tees: string[]): LayoutStep =>
  via === undefined ? { place, tees } : { place, via, tees };
const checked = (problem: Problem, ...walk: LayoutStep[]) => {
  const said: Layout = { problem: problem.hash, grade: 'light', walk, cost: 0, bound: 0, status: 'heuristic', work: 1 };
  const { cost } = checkLayout(problem, said);
  return checkLayout(problem, { ...said, cost, bound: cost });
};
const broken = (problem: Problem, ...walk: LayoutStep[]): readonly string[] => checked(problem, ...walk).broken;
const bowFed = { place: 'bow', tees: ['compass.n2k', 'feed'] };

test('a bound that is the cost itself is no fault', () => {
  expect(broken(boat, bowFed, at('helm', 'fore'))).toEqual([]);
});

test('a trunk comes to its first place by no way, and passes only places there are', () => {
  expect(broken(boat, { ...bowFed, via: 'fore' })).toEqual(['The trunk starts at bow, yet comes there by fore.']);
  expect(broken(boat, { ...bowFed, place: 'attic' })).toEqual(['There is no place attic.']);
  expect(broken(boat, bowFed, { place: 'helm', tees: [] })).toEqual(['No way named leads from bow to helm.']);
  expect(broken(boat, bowFed, at('helm', 'rear'))).toEqual(['No way rear leads from bow to helm.']);
  expect(broken(boat, bowFed, at('stern', 'fore'))).toEqual(['No way fore leads from bow to stern.']);
  expect(broken(boat, at('helm', undefined, 'compass.n2k', 'feed'), at('stern', 'fore'))).toEqual([
    'No way fore leads from helm to stern.',
  ]);
  expect(broken(boat, at('stern', undefined, 'compass.n2k', 'feed'), at('bow', 'fore'))).toEqual([
    'No way fore leads from stern to bow.',
  ]);
});

test('a trunk runs as often through a way as it may, and no oftener', () => {
  const twice = [at('stern'), at('helm', 'rear'), at('stern', 'rear')];
  const cannot = { ...boat, devices: [aDevice('compass.n2k', 'stern')] };
  const fed = (steps: readonly LayoutStep[]) => [at('stern', undefined, 'compass.n2k', 'feed'), ...steps.slice(1)];
  expect(broken(cannot, ...fed(twice))).toEqual([]);
  expect(broken(cannot, ...fed(twice), at('helm', 'rear'))).toEqual([
    'The trunk runs 3 times through rear; 2 is the most.',
  ]);
  expect(broken(boat, bowFed, at('helm', 'fore'), at('bow', 'fore'))).toEqual([
    'The trunk runs 2 times through fore; 1 is the most.',
  ]);
});

test('trunk that is kept must be used as often as it lies, may be where new trunk may not, and is not paid again', () => {
  const held = [at('bow'), at('helm', 'fore'), at('bow', 'fore')];
  const extra = boat.ways.map((way) => ({ ...way, extra: 900 }));
  const kept = { ...boat, ways: extra, held };
  const twice = [bowFed, at('helm', 'fore'), at('bow', 'fore')];
  expect(broken(kept, ...twice)).toEqual([]);
  expect(broken(kept, bowFed, at('helm', 'fore'))).toEqual(['The trunk that lies in fore is not used.']);
  expect(checked(kept, ...twice).cost).toBe(checked({ ...boat, ways: extra }, bowFed).cost);
});

test('both ends of the trunk lie where an end may be reached, whatever it passes between', () => {
  expect(broken(boat, bowFed, at('helm', 'fore'), at('locker', 'side'))).toEqual(['The trunk may not end at locker.']);
  expect(broken(boat, at('locker'), at('helm', 'side'), { ...bowFed, via: 'fore' })).toEqual([
    'The trunk may not end at locker.',
  ]);
  expect(broken(boat, bowFed, at('helm', 'fore'), at('locker', 'side'), at('helm', 'side'))).toEqual([]);
});

test('a tee stands where tees may, and the feed where a lead reaches', () => {
  expect(
    broken(
      boat,
      at('bow', undefined, 'feed'),
      at('helm', 'fore'),
      at('locker', 'side', 'compass.n2k'),
      at('helm', 'side'),
    ),
  ).toEqual(['No tee may stand at locker.']);
  const near = { ...boat, feed: { ...boat.feed, reach: boat.feed.reach.filter(({ place }) => place !== 'bow') } };
  expect(broken(near, bowFed)).toEqual(['No feed lead reaches bow.']);
  const none = { ...boat, feed: { ...boat.feed, reach: [] } };
  expect(broken(none, at('bow', undefined, 'compass.n2k'))).toEqual(['No panel feeds this bus.']);
  expect(broken(none, bowFed)).toEqual([
    'No panel feeds this bus.',
    'A tee serves feed, which is not on this bus.',
    'No feed lead reaches bow.',
  ]);
});

test('as many spares as are wanted stand at their place, no more', () => {
  const spare = { ...boat, places: boat.places.map((place) => ({ ...place, spares: place.id === 'bow' ? 2 : 0 })) };
  const bowWith = (...tees: string[]) => at('bow', undefined, ...bowFed.tees, ...tees);
  expect(broken(spare, bowWith('spare@bow#1', 'spare@bow#2'))).toEqual([]);
  expect(broken(spare, bowWith('spare@bow#1'))).toEqual(['spare@bow#2 has no tee.']);
  expect(broken(spare, bowWith('spare@bow#0', 'spare@bow#1', 'spare@bow#2'))).toEqual([
    'A tee serves spare@bow#0, which is not on this bus.',
  ]);
});

/** The drop of a device at the stern hung at the bow, by the ways given. */
const dropBy = (...ways: Parameters<typeof aWay>[0][]): readonly string[] =>
  broken(
    {
      ...boat,
      ways: ways.map((way) => aWay(way)),
      devices: [aDevice('rudder.n2k', 'stern', { tailMm: 100, maxTailMm: 200 })],
      grades: [aGrade({ failMm: 100_000 })],
      limits: { ...boat.limits, dropMm: 0 },
    },
    at('bow', undefined, 'rudder.n2k', 'feed'),
  );

test('a drop goes the way of least nominal length, of those the least longest, whichever way round its ways are drawn', () => {
  const says = (mm: number) => [`The drop to rudder.n2k is ${mm / 1000} m as bought; the limit is 0 m.`];
  const over = { id: 'over', a: 'stern', b: 'bow', mm: 2000, maxMm: 3000 };
  expect(dropBy(over)).toEqual(says(3200));
  expect(dropBy(over, { ...over, id: 'under', mm: 2001, maxMm: 2001 })).toEqual(says(3200));
  expect(dropBy({ ...over, mm: 2001, maxMm: 2001 }, { ...over, id: 'under' })).toEqual(says(3200));
  expect(dropBy(over, { ...over, id: 'under', maxMm: 2500 })).toEqual(says(2700));
  expect(dropBy({ ...over, maxMm: 2500 }, { ...over, id: 'under' })).toEqual(says(2700));
  const legs = [
    { id: 'one', a: 'helm', b: 'stern', mm: 900, maxMm: 900 },
    { id: 'other', a: 'bow', b: 'helm', mm: 900, maxMm: 1000 },
  ];
  expect(dropBy(over, ...legs)).toEqual(says(2100));
  // Ways that hang together with nothing lead nowhere.
  expect(dropBy(over, { id: 'apart', a: 'locker', b: 'helm', mm: 100 })).toEqual(says(3200));
});

test('a drop with no way is told as such, and what the rest costs is still known', () => {
  const nowhere = { ...boat, ways: boat.ways.map((way) => ({ ...way, drop: false })) };
  const one = checked(nowhere, at('helm', undefined, 'compass.n2k', 'feed'));
  expect(one.broken).toEqual(['No way for a drop leads from helm to compass.n2k.']);
  // Two tees, two terminators, the feed and its lead, in hundredths.
  expect(one.cost).toBe((2 * 2000 + 2 * 1500 + 3000 + 200) * 1000);
});

test('a drop is bought as the shortest piece that covers it, one as long as it too', () => {
  const boughtAs = (tailMm: number): readonly string[] =>
    broken(
      {
        ...boat,
        devices: [aDevice('compass.n2k', 'bow', { tailMm })],
        pieces: [500, 1000, 2000],
        limits: { ...boat.limits, dropMm: 0 },
      },
      bowFed,
    );
  const says = (mm: number) => [`The drop to compass.n2k is ${mm / 1000} m as bought; the limit is 0 m.`];
  expect([499, 500, 501, 2001].map(boughtAs)).toEqual([says(500), says(500), says(1000), says(2001)]);
});

test('the feed lead is the one to its own place, in cost and in volts', () => {
  const reach = boat.places.map(({ id }, n) => ({ place: id, mm: 1000 + 1000 * n, maxMm: 1000 + 1000 * n }));
  const feed = { ...boat.feed, leadMicroOhmPerM: 10_000_000, lostMv: { warn: 0, fail: 0 }, reach };
  const strong = { ...boat, feed, devices: [aDevice('compass.n2k', 'bow', { tailMm: 0 })] };
  const there = checked(strong, at('bow', undefined, 'compass.n2k'), at('helm', 'fore', 'feed'));
  // 2 m of lead at 2.00, and 2 x 50 mA x (2 m x 10 ohm + 4 m x 0.057 ohm).
  expect(there.cost).toBe((4 * 400 + 2 * 2000 + 2 * 1500 + 3000 + 2 * 200) * 1000);
  expect(there.broken).toEqual(['2.023 V are lost on the way to compass.n2k; the limit is 0 V.']);
});

test('a device is at no distance from itself: one drop counts once', () => {
  const long = {
    ...boat,
    devices: [aDevice('compass.n2k', 'bow', { tailMm: 6000 })],
    grades: [aGrade({ failMm: 6000 })],
  };
  expect(broken(long, bowFed)).toEqual([]);
});
