import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat, Kit } from '../boat/boat-schema.ts';
import { type EditId, edits } from '../boat/edits/index.ts';
import { lastPhase } from '../boat/phase.ts';
import { readBoat } from '../boat/read-boat.ts';
import { writeBoat } from '../boat/write-boat.ts';
import { typicalPrices } from '../facts/prices.ts';
import { joinsOf } from '../joins/joins-of.ts';
import type { Cure, ReadingEntry } from '../plan-shape.ts';
import { arrivals, needKey } from '../readings/arrivals.ts';
import { refitOf } from '../readings/refit.ts';
import { smallBoats } from '../readings/small-boats.test-helper.ts';
import { need, type Sketch, turn, wired } from '../readings/wired.test-helper.ts';
import { withCures } from './with-cures.ts';

const cured = (boat: Boat, phase = lastPhase(boat)): ReadingEntry[] => {
  const index = indexBoat(boat);
  const refit = refitOf(index, (at) => joinsOf(index, at));
  return withCures({ refit, phase, joins: joinsOf(index, phase), readings: arrivals(refit, phase) });
};

const curesFor = (boat: Boat, key: string): readonly Cure[] =>
  cured(boat).find((entry) => needKey(entry) === key)?.whyNot?.cures ?? [];

const applied = (boat: Boat, cure: Cure): Boat =>
  // reason: the cures name edits by their ids, and each edit checks its own parameters
  cure.edits.reduce((changed, { edit, params }) => edits[edit as EditId].apply(changed, params), boat);

const arrivedOn = (boat: Boat): ReadonlySet<string> =>
  new Set(
    cured(boat)
      .filter(({ arrives }) => arrives)
      .map(needKey),
  );

test('where everything arrives there is nothing to cure', () => {
  const boat = aBoat().boat;
  expect(cured(boat).every(({ arrives }) => arrives)).toBe(true);
  expect(cured(boat).every(({ whyNot }) => whyNot === undefined)).toBe(true);
});

test('two ports that only lack the wire are joined first, and what a wire costs is said', () => {
  const boat = aBoat().change((draft) => draft.joins.pop()).boat;
  const [first] = curesFor(boat, 'position  radio');
  expect(first).toEqual({
    says: 'Join port out of Converter for the old radio to port gps-in of Old radio.',
    edits: [{ edit: 'join-ports', params: { from: 'converter.out', to: 'radio.gps-in' } }],
    // 2.2 m from the locker to the helm at 2.50 a metre
    cost: 550,
  });
});

test('the price of a cure is by the list of the owner, and where none is known in her currency it says none', () => {
  const { source: _, byGrade: __, ...usual } = typicalPrices;
  const prices = { ...usual, currency: 'USD' };
  const boat = aBoat().change((draft) => draft.joins.pop());
  const costOf = (items?: Record<string, number>) =>
    curesFor(boat.with({ prices: { ...prices, ...(items === undefined ? {} : { items }) } }).boat, 'position  radio')[0]
      ?.cost;
  expect(costOf()).toBeUndefined();
  // 2.2 m from the locker to the helm at 4.00 a metre
  expect(costOf({ 'pair-cable': 400 })).toBe(880);
});

test('without the converter a new one is bought and wired at both ends, in one step', () => {
  const boat = edits['remove-unit'].apply(aBoat().boat, { unit: 'converter' });
  const [first] = curesFor(boat, 'position  radio');
  expect(first?.edits.map(({ edit }) => edit)).toEqual(['add-unit', 'join-bus', 'join-ports']);
  expect(first?.says).toBe(
    'Fit at helm dash: Small converter from the bus to one NMEA 0183 output, typical. Put it on Navigation bus, and join its port out to port gps-in of Old radio.',
  );
  expect(first === undefined ? [] : [...arrivedOn(applied(boat, first))]).toContain('position  radio');
});

test('without a source one is bought, cheapest first, where one of its kind stood or in the weather', () => {
  const boat = edits['remove-unit'].apply(aBoat().boat, { unit: 'gnss' });
  const cures = curesFor(boat, 'position  display');
  const costs = cures.map(({ cost }) => cost ?? Number.NaN);
  expect(cures[0]?.edits[0]).toMatchObject({ edit: 'add-unit', params: { place: 'stern-rail', fate: 'comes' } });
  expect(costs).toEqual([...costs].sort((a, b) => a - b));
});

const speeds: Sketch = {
  units: {
    sounder: { ports: { out: { protocol: 'nmea0183', sends: ['DPT'], baud: 4800 } } },
    screen: { ports: { in: { protocol: 'nmea0183', hears: ['DPT'], baud: 38400 } } },
  },
  joins: { pair: ['sounder.out', 'screen.in'] },
  needs: [need('depth', 'screen')],
};

test('two speeds are made one, for nothing', () => {
  const cures = curesFor(wired(speeds), 'depth  screen').slice(0, 2);
  expect(cures.map(({ says, cost }) => [says, cost])).toEqual([
    ['Set port in of screen to 4800 baud, if it can be set.', 0],
    ['Set port out of sounder to 38400 baud, if it can be set.', 0],
  ]);
});

test('a speed that another listener needs is left alone', () => {
  const boat = wired({
    ...speeds,
    units: { ...speeds.units, pilot: { ports: { in: { protocol: 'nmea0183', hears: ['DPT'], baud: 4800 } } } },
    joins: { pair: ['sounder.out', 'screen.in', 'pilot.in'] },
    needs: [need('depth', 'screen'), need('depth', 'pilot')],
  });
  const says = curesFor(boat, 'depth  screen').map((cure) => cure.says);
  expect(says[0]).toBe('Set port in of screen to 4800 baud, if it can be set.');
  expect(says.join()).not.toContain('38400');
});

test('the instance that is asked for is set at the unit that says another', () => {
  const boat = wired({
    units: {
      gauge: { ports: { n2k: { protocol: 'nmea2000', sends: [{ pgn: 127488, instance: 0 }] } } },
      screen: { ports: { n2k: { protocol: 'nmea2000', hears: [127488] } } },
    },
    joins: { nav: ['gauge.n2k', 'screen.n2k'] },
    needs: [need('engine', 'screen', { instance: 1 })],
  });
  expect(curesFor(boat, 'engine 1 screen')[0]).toEqual({
    says: 'Set gauge to instance 1.',
    edits: [{ edit: 'set-instance', params: { port: 'gauge.n2k', reading: 'engine', instance: 1 } }],
    cost: 0,
  });
});

test('a wish for two references at once is given up for the one the screen takes', () => {
  const boat = wired({
    units: {
      compass: { ports: { n2k: { protocol: 'nmea2000', sends: [127250] } } },
      screen: {
        ports: { n2k: { protocol: 'nmea2000', hears: [{ pgn: 127250, wants: { reference: 'magnetic' } }] } },
      },
    },
    joins: { nav: ['compass.n2k', 'screen.n2k'] },
    needs: [need('heading', 'screen', { reference: 'true' })],
  });
  expect(curesFor(boat, 'heading  screen')[0]?.edits).toEqual([
    { edit: 'change-need', params: { reading: 'heading', at: 'screen', must: true, reference: 'magnetic' } },
  ]);
});

test('a unit that leaves could stay, and one that comes later could come now', () => {
  const boatWith = (kit: Partial<Kit>): Boat =>
    wired({
      units: {
        sounder: { ports: { n2k: { protocol: 'nmea2000', sends: [128267] } }, kit },
        screen: { ports: { n2k: { protocol: 'nmea2000', hears: [128267] } } },
      },
      joins: { nav: ['sounder.n2k', 'screen.n2k'] },
      needs: [need('depth', 'screen')],
    });
  const leaving = boatWith({ fate: 'goes', phase: 1 });
  expect(curesFor(leaving, 'depth  screen')[0]?.says).toBe('Keep sounder aboard.');
  const later = boatWith({ fate: 'comes', phase: 2 });
  expect(cured(later, 1)[0]?.whyNot?.cures[0]?.says).toBe('Fit sounder in phase 1 already.');
});

test('one page of a manual comes first where it may show that nothing is missing', () => {
  const unheard: Sketch = {
    units: {
      sounder: { ports: { out: { protocol: 'nmea0183', sends: ['DBT'] } }, source: 'typical' },
      screen: { ports: { in: { protocol: 'nmea0183', hears: ['DPT'] } } },
    },
    joins: { pair: ['sounder.out', 'screen.in'] },
    needs: [need('depth', 'screen')],
  };
  expect(curesFor(wired(unheard), 'depth  screen')[0]).toEqual({
    says: 'Look up in the manual of sounder whether it can send DPT.',
    edits: [],
  });
  const generations: Sketch = {
    units: {
      head: { ports: { out: { protocol: 'single-wire', sends: ['depth'], dialect: 'maker-a/1' } }, source: 'typical' },
      screen: { ports: { in: { protocol: 'single-wire', hears: ['depth'], dialect: 'maker-a/2' } }, source: 'typical' },
    },
    joins: { wire: ['head.out', 'screen.in'] },
    needs: [need('depth', 'screen')],
  };
  expect(curesFor(wired(generations), 'depth  screen')[0]?.says).toMatch(
    /^Look up in the manual of screen whether it understands this generation/,
  );
});

test('a screen that takes a reading nowhere is looked up before anything is bought for it', () => {
  const boat = aBoat().with({ needs: [need('depth', 'display')] }).boat;
  expect(curesFor(boat, 'depth  display')).toEqual([
    { says: 'Look up in the manual of Helm display whether it takes depth at all.', edits: [] },
  ]);
});

test('a converter that is on the bus already is not bought again for a wire that is missing', () => {
  const boat = wired({
    units: {
      sounder: { ports: { out: { protocol: 'nmea0183', sends: ['DPT'] } } },
      conv: {
        ports: { in: { protocol: 'nmea0183', hears: ['DPT'] }, n2k: { protocol: 'nmea2000', sends: [128267] } },
        turns: [turn('in', 'n2k', 'depth')],
      },
      screen: { ports: { n2k: { protocol: 'nmea2000', hears: [128267] } } },
    },
    joins: { nav: ['conv.n2k', 'screen.n2k'] },
    needs: [need('depth', 'screen')],
  });
  expect(curesFor(boat, 'depth  screen')[0]?.edits).toEqual([
    { edit: 'join-ports', params: { from: 'sounder.out', to: 'conv.in' } },
  ]);
});

test('every cure, made on the boat, brings its reading and takes none away, and the boat can be saved and read', () => {
  let tried = 0;
  fc.assert(
    fc.property(smallBoats, (boat) => {
      const before = arrivedOn(boat);
      for (const { whyNot, ...entry } of cured(boat))
        for (const cure of whyNot?.cures ?? []) {
          if (cure.edits.length === 0) continue;
          const after = applied(boat, cure);
          const arrived = arrivedOn(after);
          expect(arrived.has(needKey(entry))).toBe(true);
          for (const key of before) expect(arrived.has(key)).toBe(true);
          expect(readBoat(writeBoat(after))).toEqual(after);
          tried += 1;
        }
    }),
    { numRuns: 25 },
  );
  expect(tried).toBeGreaterThan(25);
});
