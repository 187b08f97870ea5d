import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shortestRoutes } from '../../network/shortest-route.ts';
import { aDevice, aPlace, aWay } from '../a-problem.test-helper.ts';
import { bruteLayout } from '../brute-layout.test-helper.ts';
import { ladderBoat } from '../ladder-boat.test-helper.ts';
import type { Problem } from '../problem.ts';
import { tinyProblem } from '../tiny-problem.test-helper.ts';
import { dropTable } from './drop-table.ts';
import { FeedSieve } from './feed-sieve.ts';
import { firstGround, inARow, isHopeless } from './hopeless.test-helper.ts';
import { LeastMoment } from './least-moment.ts';
import { noLegsKeepVolts } from './leg-search.ts';

test('the least moment of three devices in a row is current times trunk, in shares of what two legs may have', () => {
  // 50 mA x (4 m + 5 m) = 0.45 A m; two legs may have 90 mV / 0.1 ohm a metre = 0.9 A m.
  const ground = firstGround(inARow({ lostMv: 90 }));
  const [lead] = ground.leads;
  if (lead === undefined) throw new Error('The boat has no feed.');
  const purse = { left: 100 };
  const moment = new LeastMoment({ ground, drops: dropTable(ground), lead, purse });
  const shareAt = (bowMm: number, sternMm: number): number => moment.share(Float64Array.of(bowMm, 0, sternMm));
  expect(shareAt(4000, 5000)).toBeCloseTo(0.5, 12);
  // No device alone may be farther than 9 m, its drop counted.
  expect(shareAt(8700, 8700)).toBeCloseTo(17.4 / 18, 12);
  expect(shareAt(4000, 8701)).toBe(Number.POSITIVE_INFINITY);
  expect(purse.left).toBeLessThan(100);
});

test('what the feed lead loses is taken off both limits before the moment is measured', () => {
  // 150 mA lose 30 of the 90 mV in 1 m of lead at 0.1 ohm a metre; 60 mV are 0.6 A m for two legs, and 6 m for one device.
  const ground = firstGround(inARow({ lostMv: 90, leadMicroOhmPerM: 100_000 }));
  const [lead] = ground.leads;
  if (lead === undefined) throw new Error('The boat has no feed.');
  const moment = new LeastMoment({ ground, drops: dropTable(ground), lead, purse: { left: 100 } });
  const shareAt = (bowMm: number, sternMm: number): number => moment.share(Float64Array.of(bowMm, 0, sternMm));
  expect(shareAt(4000, 5000)).toBeCloseTo(0.75, 12);
  expect(shareAt(5700, 5700)).toBeCloseTo(0.95, 12);
  expect(shareAt(4000, 5701)).toBe(Number.POSITIVE_INFINITY);
});

test('what both legs may lose goes by the device that may lose most, for it may be the farthest of both', () => {
  const boat = inARow({ lostMv: 90 });
  const devices = boat.devices.map((device) => (device.place === 'helm' ? { ...device, minMv: 11_950 } : device));
  const ground = firstGround({ ...boat, devices });
  const [lead] = ground.leads;
  if (lead === undefined) throw new Error('The boat has no feed.');
  const moment = new LeastMoment({ ground, drops: dropTable(ground), lead, purse: { left: 100 } });
  expect(moment.share(Float64Array.of(4000, 0, 5000))).toBeCloseTo(0.5, 12);
});

test('one feed that keeps the volts is enough, however hopeless the others are', () => {
  // From the bow 50 mA x (4 m + 9 m) = 0.65 A m, from the helm 0.45 A m; two legs may have 0.6 A m.
  const fed = (...fedAt: readonly string[]) => inARow({ lostMv: 60, fedAt });
  expect([isHopeless(fed('bow')), isHopeless(fed('helm')), isHopeless(fed('bow', 'helm'))]).toEqual([
    true,
    false,
    false,
  ]);
  expect(bruteLayout(fed('bow', 'helm'))).toBeDefined();
  expect(isHopeless(fed('bow', 'stern'))).toBe(true);
});

test('legs as long together as the trunk may be are allowed, a millimetre more is not', () => {
  const long = (mostMm: number) => inARow({ lostMv: 60, tailMm: 0, dropMm: 100, mostMm });
  expect([bruteLayout(long(9000)) === undefined, isHopeless(long(9000))]).toEqual([false, false]);
  expect([bruteLayout(long(8999)) === undefined, isHopeless(long(8999))]).toEqual([true, true]);
});

test('long drops spare the trunk its moment, as far as the limit on all drops lets them', () => {
  // Two legs may have 0.6 A m. With every tee beside its device they have 50 mA x (4 m + 5 m + 5 m) = 0.7 A m.
  const boat = { lostMv: 60, devices: ['bow', 'stern', 'stern'] };
  expect(bruteLayout(inARow(boat))).toBeUndefined();
  expect(isHopeless(inARow(boat))).toBe(true);
  expect(bruteLayout(inARow({ ...boat, dropMm: 6000 }))).toBeDefined();
  expect(isHopeless(inARow({ ...boat, dropMm: 6000 }))).toBe(false);
  expect(bruteLayout(inARow({ ...boat, dropMm: 6000, dropsMm: 2500 }))).toBeUndefined();
  expect(isHopeless(inARow({ ...boat, dropMm: 6000, dropsMm: 2500 }))).toBe(true);
});

test('legs that must take one place after the other have more moment than the shortest roads', () => {
  // From the helm 2 m to each of three places: one leg has to come back through the helm for the third.
  const ends = ['bow', 'port', 'stern'];
  const boat = (lostMv: number): Problem => ({
    ...inARow({ lostMv }),
    places: ['bow', 'helm', 'port', 'stern'].map((id) => aPlace(id)),
    ways: ends.map((id) => aWay({ id: `to-${id}`, a: 'helm', b: id, mm: 2000 })),
    devices: ends.map((id) => aDevice(`${id}.n2k`, id, { len: id === 'port' ? 1 : 2 })),
  });
  // By the shortest roads 0.1 A x (2 m + 2 m) + 0.05 A x 2 m, by legs, with port the last, 0.1 A x (2 m + 2 m) + 0.05 A x 6 m.
  expect(isHopeless(boat(69))).toBe(true);
  expect(isHopeless(boat(70))).toBe(false);
});

test('what volts leave over may be ruled out by what the trunk costs', () => {
  const boat = inARow({ lostMv: 60 });
  const cost = bruteLayout(boat)?.cost ?? 0;
  expect(isHopeless(boat, { under: cost + 1 })).toBe(false);
  expect(isHopeless(boat, { under: cost })).toBe(true);
});

test('without work only what needs no step is called hopeless', () => {
  const boat = inARow({ lostMv: 60, devices: ['bow', 'stern', 'stern'] });
  expect(isHopeless(boat, { work: 0 })).toBe(true);
  const dear = { under: bruteLayout(inARow({ lostMv: 60 }))?.cost ?? 0 };
  expect(isHopeless(inARow({ lostMv: 60 }), dear)).toBe(true);
  expect(isHopeless(inARow({ lostMv: 60 }), { ...dear, work: 0 })).toBe(false);
});

/**
 * A boat small enough to try everything, fed at its first place, with a device at each place that hardly hangs anywhere else.
 * The volts are enough for moments by the shortest roads, or up to twice that: there the legs decide.
 */
const tightBoat = fc
  .tuple(tinyProblem, fc.integer({ min: -1, max: 8 }), fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 6 }))
  .filter(([{ ways }]) => ways.length <= 5 && ways.filter(({ trunk }) => trunk === 2).length <= 4)
  .map(([boat, eighths, lens]): Problem => {
    const places = boat.places.map((place) => ({ ...place, tees: true, spares: 0 }));
    const own = { microOhmPerM: 200_000, warnMm: 100_000, failMm: 100_000, maxMa: 3000 };
    const edges = boat.ways
      .filter(({ trunk }) => trunk > 0)
      .map(({ id, a, b, maxMm }) => ({ id, a, b, mm: maxMm, longestMm: maxMm }));
    const routes = shortestRoutes({ edges, from: places[0]?.id ?? '' });
    const devices = places.map(({ id }, n) => aDevice(`d${n}.n2k`, id, { len: lens[n] ?? 1, minMv: 5000 }));
    const moment = devices.reduce((sum, { place, len }) => sum + 50 * len * (routes.get(place)?.mm ?? 0), 0);
    const lostMv = 5 + Math.ceil((0.0002 * moment * (8 + eighths)) / 8);
    return {
      ...boat,
      places,
      devices,
      grades: boat.grades.slice(0, 1).map((grade) => ({ ...grade, ...own })),
      limits: { ...boat.limits, dropMm: 800, dropsMm: 78_000 },
      feed: {
        ...boat.feed,
        lostMv: { warn: lostMv, fail: lostMv },
        leadMicroOhmPerM: 0,
        reach: places.slice(0, 1).map(({ id }) => ({ place: id, mm: 500, maxMm: 600 })),
      },
    };
  });

test('what is called hopeless has no layout under the cost, on six hundred tiny boats', () => {
  const counts = { hopeless: 0, byLegs: 0, possible: 0, dear: 0 };
  /** rounds of prices before a step is taken, twice eight at the most */
  const firstWork = 16;
  fc.assert(
    fc.property(tightBoat, (problem) => {
      const best = bruteLayout(problem);
      const ground = firstGround(problem);
      const purse = { left: 100_000 };
      if (noLegsKeepVolts({ ground, leads: ground.leads, under: Number.POSITIVE_INFINITY, purse })) {
        expect(best).toBeUndefined();
        counts.hopeless += 1;
        if (100_000 - purse.left > firstWork) counts.byLegs += 1;
      }
      if (best === undefined) return;
      counts.possible += 1;
      expect(isHopeless(problem, { under: best.cost + 1 })).toBe(false);
      if (isHopeless(problem, { under: best.cost })) counts.dear += 1;
    }),
    { numRuns: 600, seed: 17 },
  );
  expect(counts.hopeless).toBeGreaterThan(300);
  expect(counts.byLegs).toBeGreaterThan(20);
  expect(counts.possible).toBeGreaterThan(60);
  expect(counts.dear).toBeGreaterThan(25);
}, 60_000);

test.each([0, 3, 13])(
  'light cable is ruled out by the volts on ladder boat %i, which no sieve of feeds can do',
  (seed) => {
    const boat = ladderBoat(seed, { places: 60, devices: 40 });
    const ground = firstGround({ ...boat, grades: boat.grades.filter(({ id }) => id === 'light') });
    const times = Uint8Array.from(ground.ways, ({ most }) => most);
    const sieve = new FeedSieve(ground, ground.leads);
    const leads = sieve.feedsFor({ times, trunkCost: 0, under: Number.POSITIVE_INFINITY });
    expect(leads.length).toBeGreaterThan(0);
    const purse = { left: 100_000 };
    expect(noLegsKeepVolts({ ground, leads, under: Number.POSITIVE_INFINITY, purse })).toBe(true);
    expect(purse.left).toBeGreaterThan(85_000);
  },
);
