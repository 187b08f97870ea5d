import * as fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat, Kit, Need } from '../../boat/boat-schema.ts';
import type { Port, Sheet } from '../../boat/sheet.ts';
import { needWorth } from '../../facts/need-worth.ts';
import { arrivedIn, needKey } from '../../readings/arrivals.ts';
import { portNetworkOf } from '../../readings/port-network.ts';
import { refitOf } from '../../readings/refit.ts';
import { joinsOf } from '../joins-of.ts';
import { wiredBoat } from '../wired-boat.ts';
import { type CandidateJoin, candidateJoins } from './candidate-joins.ts';
import { clashesOf } from './clashes-of.ts';
import { joinsMade } from './joins-made.ts';
import { withJoins } from './propose-joins.ts';

const port = (id: string, protocol: Port['protocol'], more: Partial<Port>): Port => ({
  id,
  onPlug: `plug-${id}`,
  protocol,
  role: 'both',
  ...more,
});
const talks = (id: string, ...sentences: string[]): Port =>
  port(id, 'nmea0183', { role: 'talk', sends: sentences.map((sentence) => ({ sentence, everyMs: 1000 })) });
const listens = (id: string, ...sentences: string[]): Port =>
  port(id, 'nmea0183', { role: 'listen', hears: sentences.map((sentence) => ({ sentence })) });
const onBus = (sends: readonly number[], hears: readonly number[] = []): Port =>
  port('n2k', 'nmea2000', { len: 1, sends: sends.map((pgn) => ({ pgn })), hears: hears.map((pgn) => ({ pgn })) });

const sheet = (id: string, ports: readonly Port[], turns?: Sheet['turns']): Sheet => ({
  id,
  name: id,
  kind: id,
  source: 'typical',
  plugs: ports.map((one) => ({ id: `plug-${one.id}`, connector: 'leads', gender: 'none' })),
  ports: [...ports],
  ...(turns === undefined ? {} : { turns }),
});

/** Small units with which everything that joins can be proposed for happens. */
const sheets: readonly Sheet[] = [
  sheet('old-gps', [talks('out', 'RMC')]),
  sheet('old-depth', [talks('out', 'DPT')]),
  sheet('old-screen', [listens('in', 'RMC', 'DPT')]),
  sheet('two-inputs', [listens('in-1', 'RMC', 'DPT'), listens('in-2', 'RMC', 'DPT')]),
  sheet('bus-gps', [onBus([129025])]),
  sheet('bus-depth', [onBus([128267])]),
  sheet('bus-screen', [onBus([], [129025, 128267])]),
  sheet(
    'mixer',
    [listens('in-1', 'RMC', 'DPT'), listens('in-2', 'RMC', 'DPT'), talks('out', 'RMC', 'DPT')],
    ['in-1', 'in-2'].map((fromPort) => ({
      fromPort,
      toPort: 'out',
      carries: [{ reading: 'position' }, { reading: 'depth' }],
    })),
  ),
  sheet(
    'two-way',
    [onBus([128267, 129025], [128267, 129025]), listens('in', 'RMC', 'DPT'), talks('out', 'RMC', 'DPT')],
    [
      { fromPort: 'in', toPort: 'n2k', carries: [{ reading: 'position' }, { reading: 'depth' }] },
      { fromPort: 'n2k', toPort: 'out', carries: [{ reading: 'position' }, { reading: 'depth' }] },
    ],
  ),
];
const places = ['helm', 'locker', 'mast-base', 'stern-rail'];

interface Small {
  readonly units: readonly { readonly sheet: string; readonly place: string }[];
  readonly needs: readonly { readonly reading: 'position' | 'depth'; readonly at: number; readonly must: boolean }[];
}

const boatOf = ({ units, needs }: Small): Boat => {
  const kit = units.map(
    (unit, at): Kit => ({ id: `u${at}`, name: `unit ${at}`, sheet: unit.sheet, fate: 'comes', place: unit.place }),
  );
  const wanted = needs.flatMap(({ reading, at, must }): Need[] => {
    const unit = kit[at % kit.length];
    return unit === undefined ? [] : [{ reading, at: unit.id, must }];
  });
  const once = wanted.filter((one, at) => wanted.findIndex((other) => needKey(one) === needKey(other)) === at);
  const tern = aBoat().boat;
  return { ...tern, sheets: [...sheets], kit, needs: once, joins: [], supply: { ...tern.supply, panels: [] } };
};

const smalls: fc.Arbitrary<Small> = fc.record({
  units: fc.array(
    fc.record({ sheet: fc.constantFrom(...sheets.map(({ id }) => id)), place: fc.constantFrom(...places) }),
    { minLength: 2, maxLength: 5 },
  ),
  needs: fc.array(
    fc.record({
      reading: fc.constantFrom('position' as const, 'depth' as const),
      at: fc.nat(4),
      must: fc.boolean(),
    }),
    { minLength: 1, maxLength: 4 },
  ),
});

const arrivedOn = (boat: Boat): ReadonlySet<string> => {
  const index = indexBoat(boat);
  return arrivedIn(
    refitOf(index, (phase) => joinsOf(index, phase)),
    1,
  );
};

/** What joins cost, with every need left unmet at its worth, and a hundredth a join. */
const costOf = (boat: Boat, chosen: readonly CandidateJoin[]): number => {
  const joined = withJoins(boat, joinsMade(indexBoat(boat), [], chosen));
  const arrived = arrivedOn(joined);
  return (
    chosen.reduce((sum, { cost }) => sum + cost + 1, 0) +
    boat.needs
      .filter((need) => !arrived.has(needKey(need)))
      .reduce((sum, { must }) => sum + (must ? needWorth.must : needWorth.nice).value, 0)
  );
};

const hasRoom = (room: ReadonlyMap<string, number>, chosen: readonly CandidateJoin[]): boolean => {
  const taken = new Map<string, number>();
  for (const key of chosen.flatMap(({ takes }) => takes)) taken.set(key, (taken.get(key) ?? 0) + 1);
  return [...taken].every(([key, count]) => count <= (room.get(key) ?? Number.POSITIVE_INFINITY));
};

const isSound = (boat: Boat, chosen: readonly CandidateJoin[]): boolean =>
  clashesOf(
    indexBoat(boat),
    chosen.map((one, candidate) => ({
      join: {
        id: one.id,
        kind: one.kind,
        ...(one.bus === undefined ? {} : { bus: one.bus }),
        members: [...one.members],
        from: 'proposed',
      },
      candidate,
    })),
  ).length === 0;

/** Every choice of candidates there is, each looked at on the boat itself. */
const byAll = (boat: Boat, most: number): number | undefined => {
  const index = indexBoat(boat);
  const { joins, room } = candidateJoins({
    index,
    network: portNetworkOf(index, 1, []),
    standing: [],
    offers: new Map(),
  });
  if (joins.length > most) return undefined;
  let least = Number.POSITIVE_INFINITY;
  for (let bits = 0; bits < 2 ** joins.length; bits += 1) {
    const chosen = joins.filter((_, at) => (bits >> at) & 1);
    if (hasRoom(room, chosen) && isSound(boat, chosen)) least = Math.min(least, costOf(boat, chosen));
  }
  return least;
};

describe('the joins proposed for a small kit', () => {
  it('cost what the cheapest of all possible joins cost', () => {
    let tried = 0;
    fc.assert(
      fc.property(smalls, (small) => {
        const boat = boatOf(small);
        const least = byAll(boat, 9);
        if (least === undefined) return;
        const { proposal, boat: joined } = wiredBoat(boat);
        const missed = joined.needs.filter((need) => !arrivedOn(joined).has(needKey(need)));
        const count = joined.joins.reduce(
          (sum, { kind, members }) => sum + (kind === 'nmea2000' ? members.length : members.length - 1),
          0,
        );
        const unmet = missed.reduce((sum, { must }) => sum + (must ? needWorth.must : needWorth.nice).value, 0);
        expect((proposal?.cost ?? 0) + count + unmet).toBe(least);
        expect(proposal?.proven ?? true).toBe(true);
        tried += proposal === undefined ? 0 : 1;
      }),
      { numRuns: 150 },
    );
    expect(tried).toBeGreaterThan(20);
  });

  it('are the same however the file lists its units', () => {
    fc.assert(
      fc.property(smalls, (small) => {
        const boat = boatOf(small);
        const turned = { ...boat, kit: [...boat.kit].reverse(), needs: [...boat.needs].reverse() };
        expect(wiredBoat(turned).proposal).toEqual(wiredBoat(boat).proposal);
      }),
      { numRuns: 60 },
    );
  });

  it('bring no less when a unit more comes aboard', () => {
    fc.assert(
      fc.property(smalls, fc.constantFrom(...sheets.map(({ id }) => id)), (small, more) => {
        const needs = small.needs.map((need) => ({ ...need, at: need.at % small.units.length, must: true }));
        const fixed = { ...small, needs };
        const before = arrivedOn(wiredBoat(boatOf(fixed)).boat).size;
        const after = arrivedOn(
          wiredBoat(boatOf({ ...fixed, units: [...fixed.units, { sheet: more, place: 'helm' }] })).boat,
        ).size;
        expect(after).toBeGreaterThanOrEqual(before);
      }),
      { numRuns: 60 },
    );
  });
});

const unit = (id: string, of: string, place: string): Kit => ({ id, name: id, sheet: of, fate: 'comes', place });
const withKit = (kit: readonly Kit[], needs: readonly Need[]): Boat => ({
  ...boatOf({ units: [], needs: [] }),
  kit: [...kit],
  needs: [...needs],
});
const idsOf = (boat: Boat): string[] => (wiredBoat(boat).proposal?.joins ?? []).map(({ join }) => join);

test('two talkers for one input go through a multiplexer', () => {
  const kit = [
    unit('gps', 'old-gps', 'stern-rail'),
    unit('log', 'old-depth', 'mast-base'),
    unit('mux', 'mixer', 'locker'),
    unit('screen', 'old-screen', 'helm'),
  ];
  const needs: Need[] = ['position' as const, 'depth' as const].map((reading) => ({
    reading,
    at: 'screen',
    must: true,
  }));
  const ids = idsOf(withKit(kit, needs));
  expect(ids).toHaveLength(3);
  expect(ids[0]).toMatch(/^nmea0183:gps\.out~mux\.in-[12]$/);
  expect(ids[1]).toMatch(/^nmea0183:log\.out~mux\.in-[12]$/);
  expect(ids[2]).toBe('nmea0183:mux.out~screen.in');
});

test('a join that a person forbids is gone round', () => {
  const kit = [unit('gps', 'old-gps', 'helm'), unit('screen', 'two-inputs', 'helm')];
  const boat = withKit(kit, [{ reading: 'position', at: 'screen', must: true }]);
  expect(idsOf(boat)).toEqual(['nmea0183:gps.out~screen.in-1']);
  const forbidden: Boat = {
    ...boat,
    joins: [
      {
        id: 'not-there',
        kind: 'nmea0183',
        members: [
          { kit: 'gps', port: 'out', as: 'talk' },
          { kit: 'screen', port: 'in-1', as: 'listen' },
        ],
        hold: 'never',
      },
    ],
  };
  expect(idsOf(forbidden)).toEqual(['nmea0183:gps.out~screen.in-2']);
});

test('what would only be nice is left out where the cable costs more than it is worth', () => {
  const kit = [unit('gps', 'old-gps', 'stern-rail'), unit('screen', 'old-screen', 'helm')];
  const nice = withKit(kit, [{ reading: 'position', at: 'screen', must: false }]);
  expect(idsOf(nice)).toHaveLength(1);
  const dear: Boat = {
    ...nice,
    prices: {
      currency: 'EUR',
      trunkPerM: 100,
      dropPerM: 100,
      tee: 100,
      terminator: 100,
      feed: 100,
      feedLeadPerM: 100,
      hour: 100,
      items: { 'pair-cable': 10_000 },
    },
  };
  expect(idsOf(dear)).toEqual([]);
});

test('where everything arrives nothing is proposed', () => {
  expect(wiredBoat(aBoat().boat).proposal).toBeUndefined();
});

test('two readings for one input, without a multiplexer: both are named, and the input there is too little of', () => {
  const kit = [
    unit('gps', 'old-gps', 'stern-rail'),
    unit('log', 'old-depth', 'mast-base'),
    unit('screen', 'old-screen', 'helm'),
  ];
  const needs: Need[] = ['position' as const, 'depth' as const].map((reading) => ({
    reading,
    at: 'screen',
    must: true,
  }));
  const { proposal } = wiredBoat(withKit(kit, needs));
  expect(proposal?.joins).toHaveLength(1);
  expect(proposal?.clashes).toHaveLength(1);
  expect(proposal?.clashes[0]?.needs.map(({ reading }) => reading).toSorted()).toEqual(['depth', 'position']);
  expect(proposal?.clashes[0]?.over).toEqual(['screen.in']);
});

test('a join that is proposed does not stand before the refit', () => {
  const kit = [
    { ...unit('gps', 'old-gps', 'helm'), fate: 'stays' as const },
    { ...unit('screen', 'old-screen', 'helm'), fate: 'stays' as const },
  ];
  const { boat } = wiredBoat(withKit(kit, [{ reading: 'position', at: 'screen', must: true }]));
  expect(joinsOf(indexBoat(boat), 1).map(({ from }) => from)).toEqual(['proposed']);
  expect(joinsOf(indexBoat(boat), 0)).toEqual([]);
});
