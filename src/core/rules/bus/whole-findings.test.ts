import { expect, test } from 'vitest';
import { aBoat, type BoatBuilder } from '../../boat/a-boat.test-helper.ts';
import type { BusEntry } from '../../plan-shape.ts';
import { findingsOf, type RuleCase } from '../rule-case.test-helper.ts';
import { told as toldBy } from '../told.test-helper.ts';
import { busRules } from './index.ts';

const told = (id: string, given: RuleCase): readonly string[] => toldBy(busRules, `bus/${id}`, given);

test('drops too long, each and together, are told with what is too much', () => {
  expect(told('drop-too-long', { bus: { drops: [{ port: 'display.n2k', lengthM: 8.3, boughtM: 8.4 }] } })).toEqual([
    'fault display.n2k nav: The drop to Helm display is 8.40 m as bought; the limit for one drop is 6.00 m. [8.4 m / 6] Bring the trunk nearer, or shorten the drop by 2.40 m.',
  ]);
  expect(told('drops-too-long-together', { bus: { dropsM: 78.5 } })).toEqual([
    'fault nav: The drops of Navigation bus add up to 78.50 m as bought; the limit is 78.00 m together. [78.5 m / 78] Lead the trunk past the units with the longest drops, or split the bus in two.',
  ]);
});

test('at its fail limit a bus is still only doubted, over it a fault', () => {
  const farthest = (farthestM: number) =>
    told('too-far-end-to-end', { bus: { grade: 'mid', farthestM } }).map((one) => one.replace(/ [A-Z].*\[/, ' ['));
  expect([200, 200.5, 250, 250.5].flatMap(farthest)).toEqual([
    'doubt nav: [200.5 m / 200] Shorten the trunk or the drops at its ends, use heavier cable, or split the bus in two.',
    'doubt nav: [250 m / 200] Shorten the trunk or the drops at its ends, use heavier cable, or split the bus in two.',
    'fault nav: [250.5 m / 250] Shorten the trunk or the drops at its ends, use heavier cable, or split the bus in two.',
  ]);
});

test('one device too many is told of its bus with their number', () => {
  expect(told('too-many-devices', { bus: { devices: 51 } })).toEqual([
    'fault nav: 51 devices hang on Navigation bus; the limit is 50. The last ones may never find an address. [51 devices / 50] Split the bus in two with a bridge between them.',
  ]);
});

test('a device that gets too little and loses too much has both told; one that just gets enough neither', () => {
  const volts = (lowestV: number, dropV: number) => [{ port: 'display.n2k', lowestV, dropV }];
  expect(told('volts-too-low', { bus: { volts: volts(8.99, 1.9) } })).toEqual([
    'fault display.n2k nav: Helm display gets 8.99 V when the battery is at its lowest; it needs 9 V. [8.99 V / 9] Move the feed nearer, use heavier cable, or feed the bus in two parts with the positive cut between them.',
    'fault display.n2k nav: 1.90 V are lost on the way to Helm display; the limit is 1.67 V. [1.9 V / 1.67] Move the feed nearer, use heavier cable, or take the heaviest loads off the bus.',
  ]);
  expect(told('volts-too-low', { bus: { volts: volts(9, 1.5) } })).toEqual([]);
  expect(told('volts-too-low', { bus: { volts: [] } })).toEqual([]);
});

test('tees where none should be are told by number and by why', () => {
  const at = (place: string, ...tees: string[]): Partial<BusEntry> => ({ walk: [{ place, tees }] });
  const boat = aBoat().change((draft) => {
    for (const place of draft.places) if (place.id === 'locker') place.tees = false;
  }).boat;
  const cure = 'Put the tee at the nearest dry place and lead a drop from there.';
  expect(told('tee-not-allowed-here', { boat, bus: at('stern-rail', 'gnss.n2k') })).toEqual([
    `fault nav stern-rail: A tee stands at stern rail, where it is weather and no tees are allowed. Wet joints are the commonest fault of a bus. [ / ] ${cure}`,
  ]);
  expect(told('tee-not-allowed-here', { boat, bus: at('locker', 'gnss.n2k', 'feed') })).toEqual([
    `fault locker nav: 2 tees stand at electrical locker, where no tees are allowed. Wet joints are the commonest fault of a bus. [ / ] ${cure}`,
  ]);
});

test('an end out of reach is told by bus and place', () => {
  const boat = aBoat().change((draft) => {
    for (const place of draft.places) if (place.id === 'mast-base') place.reach = 'hard';
  }).boat;
  expect(told('end-out-of-reach', { boat })).toEqual([
    'fault mast-base nav: The trunk of Navigation bus ends at mast base, which is hard to reach, so its terminator can never be checked. [ / ] End the trunk at the nearest place that opens by hand or behind a panel.',
  ]);
});

test('a way with too much trunk in it is told by its ends, how often, and how often it may be', () => {
  const walked = (times: number, change: Parameters<BoatBuilder['change']>[0]) =>
    told('trunk-too-often-in-a-way', {
      boat: aBoat().change(change).boat,
      bus: { walk: Array.from({ length: times }, () => ({ place: 'helm', via: 'locker-helm', tees: [] })) },
    }).map((one) => one.replace(/ End the trunk.*/, ''));
  const way = (own: object) => (boat: Parameters<Parameters<BoatBuilder['change']>[0]>[0]) => {
    for (const one of boat.ways) if (one.id === 'locker-helm') Object.assign(one, own);
  };
  const told_ = (times: string, kind: string, most: string, n: number) => [
    `fault locker-helm nav: The trunk of Navigation bus runs ${times} through the ${kind} from electrical locker to helm dash, which takes it ${most}. [${n} passes / ]`,
  ];
  expect(walked(2, way({ kind: 'gland' }))).toEqual(told_('twice', 'gland', 'once', 2));
  expect(walked(3, way({}))).toEqual(told_('3 times', 'conduit', 'twice', 3));
  expect(walked(2, way({ allows: ['feed'] }))).toEqual(told_('twice', 'conduit', 'not at all', 2));
  expect(walked(2, way({}))).toEqual([]);
});

/** The joins of a small boat as a plan holds them, each unit of the bus with its port. */
const navJoins = (...kit: string[]): NonNullable<NonNullable<RuleCase['plan']>['joins']> => [
  {
    id: 'nav-join',
    kind: 'nmea2000',
    bus: 'nav',
    members: kit.map((unit) => ({ kit: unit, port: 'n2k', as: 'both' })),
    from: 'file',
    lines: [],
  },
];

test('three devices of unknown LEN are named, more are counted', () => {
  const unknown = (...kit: string[]) => {
    const boat = aBoat().change((draft) => {
      for (const sheet of draft.sheets) for (const port of sheet.ports) delete port.len;
    }).boat;
    return told('len-not-known', { boat, plan: { joins: navJoins(...kit) } });
  };
  const tail = 'It is counted from their largest current, or as 1, so the volts are better than they may be.';
  const cure = 'Read the LEN in each manual or on the unit, and enter it on the port of its sheet.';
  const three = 'Heading sensor at the mast, Converter for the old radio, Helm display';
  expect(unknown('compass', 'converter', 'display')).toEqual([
    `doubt nav: The load (LEN) of 3 of 3 devices on Navigation bus is not known: ${three}. ${tail} [3 devices / ] ${cure}`,
  ]);
  expect(unknown('compass', 'converter', 'display', 'gnss')).toEqual([
    `doubt nav: The load (LEN) of 4 of 4 devices on Navigation bus is not known: ${three} and 1 more. ${tail} [4 devices / ] ${cure}`,
  ]);
});

test('a unit the bus runs through is told as leaving only where both its own ports are joined, and the join stands', () => {
  const found = (phase: number | undefined, recipe: Parameters<BoatBuilder['change']>[0] = () => undefined) =>
    told('in-line-unit-leaves', {
      boat: aBoat()
        .sheet('small-display', (sheet) => {
          const port = sheet.ports.find(({ id }) => id === 'n2k');
          if (port !== undefined) sheet.ports.push({ ...port, id: 'n2k-b' });
          sheet.inLine = ['n2k', 'n2k-b'];
        })
        .unit('display', { fate: 'goes', ...(phase === undefined ? {} : { phase }) })
        .change((draft) => {
          draft.joins[0]?.members.push({ kit: 'display', port: 'n2k-b', as: 'both' });
          recipe(draft);
        }).boat,
    });
  const tail =
    'When it is taken out the bus is cut in two, and neither half has two terminators. [ / ] Put a tee or a piece of trunk in its place the same day, and buy it beforehand.';
  expect(found(undefined)).toEqual([
    `fault display nav: Navigation bus runs through Helm display, which goes. ${tail}`,
  ]);
  expect(found(2)).toEqual([
    `fault display nav: Navigation bus runs through Helm display, which goes in phase 2. ${tail}`,
  ]);
  expect(
    found(2, (draft) => {
      for (const join of draft.joins) join.hold = 'never';
    }),
  ).toEqual([]);
  expect(
    found(2, (draft) => {
      // The second port of the display is joined elsewhere, and only another unit’s of that name to this bus.
      const members = draft.joins[0]?.members ?? [];
      for (const member of members) if (member.port === 'n2k-b') member.kit = 'gnss';
    }),
  ).toEqual([]);
});

test('a bus without a layout is told what is in the way, and the first change that was tried and helps', () => {
  const infeasible: Partial<BusEntry> = {
    layout: { hash: '', cost: 1, bound: 1, status: 'infeasible', work: 1, broken: ['One drop.', 'All drops.'] },
  };
  const cured = {
    says: 'The drops are in the way.',
    clashes: [],
    cures: [{ id: 'cure', says: 'Allow tees at the stern rail.', edits: [] }],
  } as unknown as NonNullable<BusEntry['mend']>;
  const joins = navJoins('display');
  const noLayout = 'fault nav: No layout was found for Navigation bus that keeps every limit.';
  expect(told('no-layout-found', { bus: infeasible, plan: { joins } })).toEqual([
    `${noLayout} The nearest one breaks this: One drop. All drops. [ / ] Check that every unit of the bus can be reached over ways, allow tees at a dry place near the far ones, or split the bus in two.`,
  ]);
  expect(told('no-layout-found', { bus: { ...infeasible, mend: cured }, plan: { joins } })).toEqual([
    `${noLayout} The drops are in the way. [ / ] Allow tees at the stern rail.`,
  ]);
  const silent = { ...cured, says: '', cures: [] };
  expect(told('no-layout-found', { bus: { ...infeasible, mend: silent }, plan: { joins } })).toEqual([
    `${noLayout} The nearest one breaks this: One drop. All drops. [ / ] None of the single changes that were tried cures it. Check that ways lead to every unit of the bus, take units off it, or make two changes together.`,
  ]);
  const unlaid = [
    { id: 'other', mend: silent },
    { id: 'nav', mend: cured },
  ];
  expect(told('no-layout-found', { plan: { joins, buses: [], unlaid } })).toEqual([
    `${noLayout} The drops are in the way. [ / ] Allow tees at the stern rail.`,
  ]);
  expect(told('no-layout-found', { plan: { joins, buses: [] } })[0]).toContain('Not even a trunk could be laid.');
  const rule = busRules.find(({ id }) => id === 'bus/no-layout-found');
  const curesOf = (mend: NonNullable<BusEntry['mend']>) =>
    rule && findingsOf(rule, { bus: { ...infeasible, mend }, plan: { joins } })[0]?.cures?.length;
  expect([curesOf(cured), curesOf(silent)]).toEqual([1, undefined]);
});
