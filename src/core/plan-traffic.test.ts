import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { indexBoat } from './boat/boat-index.ts';
import type { Boat } from './boat/boat-schema.ts';
import type { Sends } from './boat/sheet.ts';
import { joinsOf } from './joins/joins-of.ts';
import { planTraffic } from './plan-traffic.ts';
import { type UnitSketch, wired } from './readings/wired.test-helper.ts';
import reference from './traffic/reference-boat.check.json' with { type: 'json' };

const trafficOf = (boat: Boat) => {
  const index = indexBoat(boat);
  return planTraffic({ index, joins: joinsOf(index, 1) }).traffic;
};
const sender = (...sends: Sends[]): UnitSketch => ({ ports: { n2k: { protocol: 'nmea2000', sends } } });
const onOneBus = (units: Record<string, UnitSketch>): Boat =>
  wired({ units, joins: { nav: Object.keys(units).map((unit) => `${unit}.n2k`) } });

/** The reference boat, wired: nine units on one bus. */
const referenceBoat = (): Boat => {
  const bySender = new Map<string, Sends[]>();
  for (const { sender: name, pgn, everyMs } of reference.messages) {
    const id = name.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-');
    bySender.set(id, [...(bySender.get(id) ?? []), { pgn, everyMs }]);
  }
  return onOneBus(Object.fromEntries([...bySender].map(([id, sends]) => [id, sender(...sends)])));
};

describe('the reference boat', () => {
  const [nav] = trafficOf(referenceBoat()).buses;
  const messages = (nav?.senders ?? []).flatMap((entry) => entry.messages);

  it('MS-49: is 9.604 % full at the worst, 8.51 % as expected (computed)', () => {
    expect(Math.abs((nav?.worstPct ?? 0) - 9.604)).toBeLessThan(0.005);
    expect(Math.abs((nav?.averagePct ?? 0) - 8.51)).toBeLessThan(0.005);
    expect(nav).toMatchObject({ bus: 'nav', units: 9, shipsPct: 0 });
  });

  // 129540 waits longer here: two variations stand below it, and a full frame may always have just begun
  it.each([
    [127237, 3.2],
    [127250, 4.48],
    [129029, 17.92],
    [129540, 47.36],
  ])('MS-50: message %i waits %f ms where all its frames are queued at once', (pgn, ms) => {
    expect(messages.find((message) => message.pgn === pgn)?.waitMs).toBeCloseTo(ms, 6);
  });

  it.each([
    [127237, 5.12],
    [129029, 21.76],
    [129540, 60.8],
  ])('MS-52: message %i waits %f ms where they are handed over one by one', (pgn, ms) => {
    expect(messages.find((message) => message.pgn === pgn)?.waitFedSinglyMs).toBeCloseTo(ms, 6);
  });

  it('adds up: the senders make the bus, the messages make the sender', () => {
    const sum = (list: readonly { worstPct: number; framesPerS: number }[], part: 'worstPct' | 'framesPerS') =>
      list.reduce((all, one) => all + one[part], 0);
    expect(sum(nav?.senders ?? [], 'worstPct')).toBeCloseTo(nav?.worstPct ?? 0, 9);
    for (const one of nav?.senders ?? []) {
      expect(sum(one.messages, 'worstPct')).toBeCloseTo(one.worstPct, 9);
      expect(sum(one.messages, 'framesPerS')).toBeCloseTo(one.framesPerS, 9);
      // every frame of this boat is counted full: 160 bits
      expect(one.worstPct).toBeCloseTo((one.framesPerS * 160) / 2500, 9);
    }
  });
});

it('a bus asked for more than it carries gives no bound to the least urgent', () => {
  const [nav] = trafficOf(
    onOneBus({ flood: sender({ pgn: 127250, everyMs: 0.5 }), depth: sender({ pgn: 128267, everyMs: 1000 }) }),
  ).buses;
  const depth = nav?.senders.find(({ port }) => port === 'depth.n2k')?.messages[0];
  expect(nav?.worstPct).toBeGreaterThan(100);
  expect(depth).not.toHaveProperty('waitMs');
  expect(depth).not.toHaveProperty('waitFedSinglyMs');
});

it('a bus nobody is on is not told of, and a 0183 line once, with all its joins', () => {
  const talker: UnitSketch = { ports: { out: { protocol: 'nmea0183', sends: ['HDG'], baud: 4800 } } };
  const ear: UnitSketch = { ports: { in: { protocol: 'nmea0183', hears: ['HDG'] } } };
  const boat = wired({
    units: { compass: talker, one: ear, other: ear },
    joins: { 'pair-b': ['compass.out', 'one.in'], 'pair-a': ['compass.out', 'other.in'] },
  });
  const { buses, lines } = trafficOf(boat);
  expect(buses).toEqual([]);
  expect(lines).toMatchObject([{ talker: 'compass.out', joins: ['pair-a', 'pair-b'], baud: 4800, inputs: 0 }]);
  expect(lines[0]?.sharePct).toBeCloseTo((100 * 250) / 480, 6);
});

it('a sender more, or one that sends faster, never makes the load or a wait of the others less', () => {
  const said = fc.record({
    pgn: fc.constantFrom(127250, 127237, 129029, 129540, 127258, 65280),
    everyMs: fc.integer({ min: 50, max: 2000 }),
  });
  const waits = (boat: Boat) => {
    const [nav] = trafficOf(boat).buses;
    const own = nav?.senders.filter(({ port }) => port.startsWith('unit-')).flatMap(({ messages }) => messages) ?? [];
    return { worstPct: nav?.worstPct ?? 0, ms: own.map(({ waitMs }) => waitMs ?? Number.POSITIVE_INFINITY) };
  };
  fc.assert(
    fc.property(fc.array(said, { minLength: 1, maxLength: 5 }), said, (list, more) => {
      const units = Object.fromEntries(list.map((sent, at) => [`unit-${at}`, sender(sent)]));
      const alone = waits(onOneBus(units));
      const beside = waits(onOneBus({ ...units, more: sender(more) }));
      const faster = waits(onOneBus({ ...units, more: sender({ ...more, everyMs: more.everyMs / 2 }) }));
      expect(beside.worstPct).toBeGreaterThan(alone.worstPct);
      expect(faster.worstPct).toBeGreaterThan(beside.worstPct);
      for (const [at, ms] of alone.ms.entries()) {
        expect(beside.ms[at] ?? 0).toBeGreaterThanOrEqual(ms - 1e-9);
        expect(faster.ms[at] ?? 0).toBeGreaterThanOrEqual((beside.ms[at] ?? 0) - 1e-9);
      }
    }),
    { numRuns: 60 },
  );
});
