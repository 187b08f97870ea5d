import { expect, test } from 'vitest';
import { aBoat, type BoatBuilder } from '../boat/a-boat.test-helper.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { canonicalBoat } from '../boat/canonical-boat.ts';
import { layoutProblems } from './layout-problems.ts';
import type { Problem } from './problem.ts';
import { problemsOf as asSheStands } from './problems-of.ts';

const problemsOf = (builder: BoatBuilder): Problem[] => layoutProblems(builder.boat);
const problemOf = (builder: BoatBuilder): Problem => {
  const [problem] = problemsOf(builder);
  if (problem === undefined) throw new Error('the boat has no bus');
  return problem;
};
const limited = (limits: Readonly<Record<string, number>>): BoatBuilder =>
  aBoat().with({
    limits: Object.fromEntries(
      Object.entries(limits).map(([id, value]) => [id, { value, reason: 'asked by the surveyor' }]),
    ),
  });

test('the whole problem of the Tern, in whole millimetres, millivolts, microohms and hundredths', () => {
  const { hash: _, devices, ...rest } = problemOf(aBoat());
  const place = (id: string, own: Partial<Problem['places'][number]> = {}) => ({
    id,
    tees: true,
    end: true,
    spares: 0,
    ...own,
  });
  const way = (id: string, ends: readonly [string, string], mm: number) => ({
    id,
    a: ends[0],
    b: ends[1],
    mm,
    maxMm: mm + 100,
    trunk: 2,
    drop: true,
    extra: 0,
  });
  expect(devices.map(({ id }) => id)).toEqual(['compass.n2k', 'converter.n2k', 'display.n2k', 'gnss.n2k']);
  expect(rest).toEqual({
    format: 1,
    bus: 'nav',
    places: [
      place('battery-box', { tees: false }),
      place('helm', { spares: 1 }),
      place('locker'),
      place('mast-base'),
      place('stern-rail', { tees: false }),
    ],
    ways: [
      way('battery-locker', ['battery-box', 'locker'], 2600),
      way('helm-mast', ['helm', 'mast-base'], 1900),
      way('locker-helm', ['helm', 'locker'], 2200),
      way('locker-mast', ['locker', 'mast-base'], 2700),
      way('locker-stern', ['locker', 'stern-rail'], 4500),
    ],
    grades: [
      {
        id: 'heavy',
        warnMm: 200_000,
        failMm: 250_000,
        microOhmPerM: 14_200,
        maxMa: 8000,
        trunkPerM: 980,
        dropPerM: 1080,
      },
      {
        id: 'light',
        warnMm: 100_000,
        failMm: 100_000,
        microOhmPerM: 57_000,
        maxMa: 3000,
        trunkPerM: 420,
        dropPerM: 480,
      },
      { id: 'mid', warnMm: 200_000, failMm: 250_000, microOhmPerM: 14_200, maxMa: 4000, trunkPerM: 680, dropPerM: 750 },
    ],
    limits: { dropMm: 6000, dropsMm: 78_000, devices: 50 },
    pieces: [500, 1000, 2000, 5000],
    prices: { tee: 2200, terminator: 1600, feed: 3800 },
    feed: {
      mv: 11_599,
      lostMv: { warn: 1500, fail: 1670 },
      leadPerM: 160,
      leadMicroOhmPerM: 14_200,
      reach: [
        { place: 'helm', mm: 2700, maxMm: 2800 },
        { place: 'locker', mm: 500, maxMm: 500 },
        { place: 'mast-base', mm: 3200, maxMm: 3300 },
      ],
    },
  });
});

test('a terminator sits where somebody can reach it; aloft only on a tee, and no spare where no tee may be', () => {
  const endAt = (reach: Boat['places'][number]['reach'], tees: boolean) => {
    const boat = aBoat().change((draft) => {
      for (const place of draft.places) if (place.id === 'helm') Object.assign(place, { reach, tees, spares: 2 });
    });
    const { end, spares } = problemOf(boat).places.find(({ id }) => id === 'helm') ?? {};
    return [end, spares];
  };
  expect([endAt('open', true), endAt('panel', true), endAt('aloft', true), endAt('hard', true)]).toEqual([
    [true, 2],
    [true, 2],
    [true, 2],
    [false, 2],
  ]);
  expect([endAt('open', false), endAt('panel', false), endAt('aloft', false), endAt('hard', false)]).toEqual([
    [true, 0],
    [true, 0],
    [false, 0],
    [false, 0],
  ]);
});

test('a way takes trunk, drops, both or is left out, as it allows', () => {
  const wayThat = (allows: Boat['ways'][number]['allows']) => {
    const boat = aBoat().change((draft) => {
      for (const way of draft.ways) if (way.id === 'locker-helm' && allows) way.allows = allows;
    });
    const found = problemOf(boat).ways.find(({ id }) => id === 'locker-helm');
    return found && [found.trunk, found.drop];
  };
  expect(wayThat(['trunk'])).toEqual([2, false]);
  expect(wayThat(['drop'])).toEqual([0, true]);
  expect(wayThat(['drop', 'trunk'])).toEqual([2, true]);
  expect(wayThat(['feed'])).toBeUndefined();
});

test('from the volts of a regulated supply on, a millivolt below not, more may be lost, and there is no warning', () => {
  const lostMv = (regulatedV: number) => problemOf(limited({ 'nmea2000-regulated-volts': regulatedV })).feed.lostMv;
  expect(lostMv(11.599)).toEqual({ warn: 3000, fail: 3000 });
  expect(lostMv(11.6)).toEqual({ warn: 1500, fail: 1670 });
});

test('limits set by the owner are kept to the millimetre, devices as a whole number', () => {
  const { limits, devices } = problemOf(
    limited({
      'nmea2000-one-drop': 5.4321,
      'nmea2000-all-drops': 70.0006,
      'nmea2000-devices': 49.9,
      'nmea2000-device-volts-least': 10.5,
    }),
  );
  expect(limits).toEqual({ dropMm: 5432, dropsMm: 70_001, devices: 49 });
  // Each sheet says its own least volts, which hold.
  expect(devices.map(({ minMv }) => minMv)).toEqual([9000, 9000, 9000, 9000]);
});

test('a device without power on its sheet needs the least volts of the boat; watts become amperes at the volts they hold for', () => {
  const bare = limited({ 'nmea2000-device-volts-least': 10.5 }).sheet('gnss-receiver', (sheet) => {
    sheet.power = [];
  });
  expect(problemOf(bare).devices.find(({ id }) => id === 'gnss.n2k')?.minMv).toBe(10_500);
  const heavy = aBoat().sheet('gnss-receiver', (sheet) => {
    for (const port of sheet.ports) port.len = 3;
  });
  // What the sheet says of LEN holds, whatever its amperes come to.
  expect(problemOf(heavy).devices.find(({ id }) => id === 'gnss.n2k')?.len).toBe(3);
  const lenAt = (atV?: number, bankV = 12) => {
    const watts = aBoat().sheet('gnss-receiver', (sheet) => {
      for (const port of sheet.ports) delete port.len;
      for (const power of sheet.power ?? []) Object.assign(power, { unit: 'W', max: 12, ...(atV && { atV }) });
    });
    const fed = watts.change((draft) => {
      for (const bank of draft.supply.banks) bank.nominalV = bankV;
    });
    return problemOf(fed).devices.find(({ id }) => id === 'gnss.n2k')?.len;
  };
  // 12 W are 1.2 A at 10 V and 1 A at the 12 V of the bank; LEN 1 is 50 mA.
  expect([lenAt(10), lenAt(), lenAt(undefined, 24)]).toEqual([24, 20, 10]);
});

test('no feed lead leads to a place that no way does', () => {
  const apart = aBoat().add({
    places: [{ id: 'tender', name: 'tender', xM: 0, yM: 3, zM: 1, exposure: 'dry', reach: 'open', tees: true }],
  });
  expect(problemOf(apart).feed.reach.map(({ place }) => place)).toEqual(['helm', 'locker', 'mast-base']);
});

test('of panels that might feed a bus the nearest to all its devices does, whatever it is called', () => {
  const unfed = aBoat().change((draft) => {
    const [main] = draft.supply.panels;
    if (main === undefined) return;
    main.circuits = [];
    main.place = 'stern-rail';
    draft.supply.panels.push({ id: 'near-panel', place: 'locker', from: 'house', circuits: [] });
  });
  expect(problemOf(unfed).feed.reach.find(({ place }) => place === 'locker')?.mm).toBe(500);
});

test('every bus has a problem of its own, in order, with its own devices', () => {
  const two = aBoat().change((draft) => {
    draft.buses.push({ id: 'aft', name: 'Aft bus', protocol: 'nmea2000' });
    const [nav] = draft.joins;
    if (nav === undefined) return;
    const gnss = nav.members.filter(({ kit }) => kit === 'gnss');
    nav.members = nav.members.filter(({ kit }) => kit !== 'gnss');
    draft.joins.push({ ...nav, id: 'aft-join', bus: 'aft', members: gnss });
  });
  expect(problemsOf(two).map(({ bus, devices }) => [bus, devices.length])).toEqual([
    ['aft', 1],
    ['nav', 3],
  ]);
});

test('the problems of some buses are those they have among all', () => {
  const boat = canonicalBoat(
    aBoat().change((draft) => {
      draft.buses.push({ id: 'aft', name: 'Aft bus', protocol: 'nmea2000' });
    }).boat,
  );
  const all = asSheStands(boat);
  expect(all.map(({ bus }) => bus)).toEqual(['aft', 'nav']);
  expect(asSheStands(boat, new Set(['nav']))).toEqual(all.slice(1));
});

test('trunk that lies is kept, unless a layout is fixed that says itself where the trunk lies', () => {
  const cable: Boat['cables'][number] = {
    id: 'old-trunk',
    kind: 'trunk',
    from: { place: 'locker' },
    to: { place: 'helm' },
    serves: 'nav',
    ways: ['locker-helm'],
    length: { valueM: 2.2, how: 'taped' },
    diameterMm: 6.5,
    condition: 'good',
    fate: 'stays',
  };
  const kept = aBoat().with({ cables: [cable] });
  const walk = [{ place: 'helm', tees: ['display.n2k'] }];
  const fixed = (bus: string) => kept.with({ pins: { layouts: { [bus]: { grade: 'light', walk, state: 'fixed' } } } });
  expect(problemOf(kept).held).toHaveLength(2);
  expect(problemOf(fixed('other')).held).toHaveLength(2);
  expect(problemOf(fixed('nav'))).not.toHaveProperty('held');
});
