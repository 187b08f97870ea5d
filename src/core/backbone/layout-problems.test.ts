import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat, type BoatBuilder } from '../boat/a-boat.test-helper.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { layoutProblems } from './layout-problems.ts';
import type { Problem } from './problem.ts';

const problemOf = (builder: BoatBuilder): Problem => {
  const [problem] = layoutProblems(builder.boat);
  if (problem === undefined) throw new Error('the boat has no bus');
  return problem;
};
const deviceOf = (problem: Problem, id: string) => problem.devices.find((device) => device.id === id);

test('the bus of the Tern has its four devices, in order, with tails and LEN', () => {
  expect(problemOf(aBoat()).devices).toEqual([
    { id: 'compass.n2k', place: 'mast-base', tailMm: 500, maxTailMm: 600, len: 1, minMv: 9000 },
    { id: 'converter.n2k', place: 'locker', tailMm: 400, maxTailMm: 500, len: 2, minMv: 9000 },
    { id: 'display.n2k', place: 'helm', tailMm: 600, maxTailMm: 700, len: 1, minMv: 9000 },
    { id: 'gnss.n2k', place: 'stern-rail', tailMm: 300, maxTailMm: 300, len: 1, minMv: 9000 },
  ]);
});

test('the panel of the Tern has 11.6 V with the bank at 11.8 V: 3.1 m of 16 mm² at 30 A lose 0.2 V', () => {
  // 2 x 0.017241 x 3.1 x 30 / 16 = 0.200 V
  expect(problemOf(aBoat()).feed.mv).toBe(11_599);
});

test('a feeder of unknown size counts as losing 3 %, a bank without a lowest voltage as 11.5 V', () => {
  const unknown = aBoat().change((boat) => {
    delete boat.supply.banks[0]?.lowestV;
    delete boat.supply.panels[0]?.feeder;
  });
  expect(problemOf(unknown).feed.mv).toBe(11_155);
});

test('the feed lead reaches every place with tees from the panel, tail at the panel included', () => {
  expect(problemOf(aBoat()).feed.reach).toEqual([
    { place: 'helm', mm: 2700, maxMm: 2800 },
    { place: 'locker', mm: 500, maxMm: 500 },
    { place: 'mast-base', mm: 3200, maxMm: 3300 },
  ]);
});

test('places tell where tees and ends may be, ways how often the trunk runs through', () => {
  const hard = aBoat().change((boat) => {
    for (const place of boat.places) if (place.id === 'mast-base') place.reach = 'hard';
    for (const way of boat.ways) if (way.id === 'locker-helm') way.kind = 'gland';
    for (const way of boat.ways) if (way.id === 'locker-stern') way.hours = 1.5;
  });
  const problem = problemOf(hard);
  expect(problem.places.find(({ id }) => id === 'mast-base')).toEqual({
    id: 'mast-base',
    tees: true,
    end: false,
    spares: 0,
  });
  expect(problem.places.find(({ id }) => id === 'helm')?.spares).toBe(1);
  expect(problem.ways.find(({ id }) => id === 'locker-helm')).toMatchObject({ a: 'helm', b: 'locker', trunk: 1 });
  expect(problem.ways.find(({ id }) => id === 'locker-stern')?.extra).toBe(11_250);
});

test('a device whose LEN nobody wrote counts its largest current, 151 mA is LEN 4; one fed elsewhere counts 1', () => {
  const unsaid = aBoat()
    .sheet('gnss-receiver', (sheet) => {
      for (const port of sheet.ports) delete port.len;
      for (const power of sheet.power ?? []) power.max = 0.151;
    })
    .sheet('small-display', (sheet) => {
      for (const port of sheet.ports) delete port.len;
      sheet.power = [];
    });
  expect(deviceOf(problemOf(unsaid), 'gnss.n2k')?.len).toBe(4);
  expect(deviceOf(problemOf(unsaid), 'display.n2k')?.len).toBe(1);
});

test('a unit that goes in the last phase is no device of the bus any more', () => {
  expect(deviceOf(problemOf(aBoat().unit('compass', { fate: 'goes' })), 'compass.n2k')).toBeUndefined();
});

test('three grades are tried unless the bus names one; own prices and limits replace the typical ones', () => {
  expect(problemOf(aBoat()).grades.map(({ id }) => id)).toEqual(['heavy', 'light', 'mid']);
  const own = aBoat().change((boat) => {
    for (const bus of boat.buses) bus.grade = 'mid';
    boat.limits = { 'nmea2000-one-drop': { value: 5.5, reason: 'asked by the surveyor' } };
    boat.prices = {
      currency: 'EUR',
      trunkPerM: 300,
      dropPerM: 310,
      tee: 1000,
      terminator: 900,
      feed: 2000,
      feedLeadPerM: 100,
      hour: 6000,
    };
  });
  const problem = problemOf(own);
  expect(problem.grades).toEqual([
    {
      id: 'mid',
      warnMm: 200_000,
      failMm: 250_000,
      microOhmPerM: 14_200,
      maxMa: 4000,
      trunkPerM: 300,
      dropPerM: 310,
    },
  ]);
  expect(problem.limits.dropMm).toBe(5500);
});

test('a bus that no circuit feeds is fed from the nearest panel, not from one on the start battery', () => {
  const unfed = aBoat().change((boat) => {
    boat.supply.banks.push({
      id: 'start',
      place: 'battery-box',
      chemistry: 'flooded',
      nominalV: 12,
      capacityAh: 70,
      for: 'start',
    });
    const [main] = boat.supply.panels;
    if (main === undefined) return;
    main.circuits = [];
    boat.supply.panels.push(
      { id: 'engine-panel', place: 'helm', from: 'start', circuits: [] },
      { id: 'stern-panel', place: 'stern-rail', from: 'main-panel', circuits: [] },
    );
  });
  expect(problemOf(unfed).feed.reach.find(({ place }) => place === 'locker')?.mm).toBe(500);
});

test('a bus that no circuit feeds is not fed from a nearer panel of 24 V, which would destroy its units', () => {
  const boat = aBoat().change((draft) => {
    const [main] = draft.supply.panels;
    const [house] = draft.supply.banks;
    if (main === undefined || house === undefined) return;
    main.circuits = [];
    main.place = 'stern-rail';
    draft.supply.banks.push({ ...house, id: 'windlass', nominalV: 24, lowestV: 23 });
    draft.supply.panels.push({ id: 'high-panel', place: 'locker', from: 'windlass', circuits: [] });
  });
  expect(problemOf(boat).feed.mv).toBeLessThan(12_000);
});

test('a boat without a panel has a problem whose feed reaches nothing', () => {
  const bare = aBoat().with({ supply: { banks: [], panels: [], dcdc: [] } });
  expect(problemOf(bare).feed).toMatchObject({ mv: 0, reach: [] });
});

test('names do not count, lengths do', () => {
  const { hash } = problemOf(aBoat());
  expect(hash).toMatch(/^[0-9a-f]{64}$/);
  expect(problemOf(aBoat().with({ name: 'Plover' }).unit('gnss', { name: 'Aerial' })).hash).toBe(hash);
  const longer = aBoat().change((boat) => {
    for (const way of boat.ways) if (way.id === 'helm-mast') way.length.valueM = 1.95;
  });
  expect(problemOf(longer).hash).not.toBe(hash);
});

const shuffled = (list: readonly unknown[]): fc.Arbitrary<unknown[]> =>
  fc.shuffledSubarray([...list], { minLength: list.length });

test('shuffling the lists of the boat file changes nothing', () => {
  const { boat } = aBoat();
  const [nav] = boat.joins;
  if (nav === undefined) throw new Error('the boat has no join');
  const parts = fc.record({
    places: shuffled(boat.places),
    ways: shuffled(boat.ways),
    sheets: shuffled(boat.sheets),
    kit: shuffled(boat.kit),
    joins: shuffled(nav.members).map((members) => [{ ...nav, members }, ...boat.joins.slice(1)]),
  });
  fc.assert(
    fc.property(parts, (other) => {
      // The lists hold the very entries of a valid boat, in another order.
      expect(layoutProblems({ ...boat, ...(other as Partial<Boat>) })).toEqual(layoutProblems(boat));
    }),
    { numRuns: 50 },
  );
});
