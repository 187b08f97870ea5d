import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import type { Sends } from '../boat/sheet.ts';
import { pgnInfo } from '../facts/pgns.ts';
import { joinsOf } from '../joins/joins-of.ts';
import { turn, type UnitSketch, wired } from '../readings/wired.test-helper.ts';
import { busLoad } from './bus-load.ts';
import { messageLoadPct } from './message-load.ts';
import reference from './reference-boat.check.json' with { type: 'json' };

const loadOf = (boat: Boat, bus = 'nav', phase = 1) => {
  const index = indexBoat(boat);
  return busLoad(index, bus, joinsOf(index, phase));
};

const sender = (...sends: (number | Sends)[]): UnitSketch => ({ ports: { n2k: { protocol: 'nmea2000', sends } } });

const onOneBus = (units: Record<string, UnitSketch>): Boat =>
  wired({ units, joins: { nav: Object.keys(units).map((unit) => `${unit}.n2k`) } });

const worst = (units: Record<string, UnitSketch>): number => loadOf(onOneBus(units)).worstPct;

describe('load of one message', () => {
  it.each([
    ['MS-30', 127250, 1, 100, 0.64],
    ['MS-31', 129029, 7, 1000, 0.448],
    ['MS-32', 129540, 22, 1000, 1.408],
    ['MS-33', 127489, 4, 500, 0.512],
    ['MS-34', 129026, 1, 250, 0.256],
  ])(
    '%s: PGN %i, %i frames every %i ms, takes %f %% (formula F · b / T at 250 kbit/s)',
    (_, pgn, frames, everyMs, pct) => {
      expect(pgnInfo(pgn)).toMatchObject({ frames, everyMs });
      expect(worst({ unit: sender(pgn) })).toBeCloseTo(pct, 6);
    },
  );

  it('MS-40: AIS reports of a busy harbour, 7.4 a second of five frames and 1.3 of four, take 2.701 %', () => {
    const each = (frames: number, perS: number) => messageLoadPct({ frames, dataBytes: 28, everyMs: 1000 / perS });
    expect(each(5, 7.4) + each(4, 1.3)).toBeCloseTo(2.701, 3);
  });

  it('MS-41: forty devices asked for their product information at once take 51.2 % of a second', () => {
    expect(messageLoadPct({ frames: 40 * 20, dataBytes: 8, everyMs: 1000 })).toBeCloseTo(51.2, 6);
  });

  it('is less for a frame that is not full', () => {
    expect(messageLoadPct({ frames: 1, dataBytes: 3, everyMs: 100 })).toBeCloseTo((100 * 110) / 25_000, 6);
  });
});

describe('load of a bus', () => {
  it('MS-37: one GNSS receiver at the usual intervals takes 2.944 %', () => {
    expect(worst({ gnss: sender(129025, 129026, 129029, 129539, 129540, 126992, 127258) })).toBeCloseTo(2.944, 3);
  });

  it('MS-38: one heading and attitude sensor takes 1.344 %', () => {
    expect(worst({ heading: sender(127250, 127251, 127257) })).toBeCloseTo(1.344, 3);
  });

  it('MS-49: the reference boat takes 9.604 % at worst and 8.51 % as expected (computed)', () => {
    const bySender = new Map<string, Sends[]>();
    for (const { sender: name, pgn, everyMs } of reference.messages) {
      const id = name.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-');
      bySender.set(id, [...(bySender.get(id) ?? []), { pgn, everyMs }]);
    }
    const load = loadOf(onOneBus(Object.fromEntries([...bySender].map(([id, sends]) => [id, sender(...sends)]))));
    expect(Math.abs(load.worstPct - reference.loadPct)).toBeLessThan(0.005);
    expect(Math.abs(load.averagePct - reference.expectedPct)).toBeLessThan(0.005);
    for (const { pgn, frames } of reference.messages) expect(pgnInfo(pgn)?.frames).toBe(frames);
  });

  it('counts a tank adapter once for each tank it sends', () => {
    const box = (...tanks: ['fuel-level' | 'water-level', number][]): UnitSketch => ({
      ...sender(127505),
      turns: tanks.map(([reading, asInstance]) => turn('input', 'n2k', { reading, asInstance })),
    });
    const single = worst({ box: box() });
    expect(single).toBeCloseTo(0.0256, 6);
    expect(worst({ box: box(['fuel-level', 0], ['fuel-level', 1], ['water-level', 0]) })).toBeCloseTo(3 * single, 6);
  });

  it('leaves out what comes on event, what is on another bus, and what is not aboard', () => {
    expect(worst({ unit: sender(126996, 129285) })).toBe(0);
    const boat = onOneBus({ heading: sender(127250) });
    expect(loadOf(boat, 'ship').worstPct).toBe(0);
    const later = { ...boat, kit: boat.kit.map((unit) => ({ ...unit, fate: 'comes' as const, phase: 2 })) };
    expect([loadOf(later, 'nav', 1).worstPct, loadOf(later, 'nav', 2).worstPct]).toEqual([0, 0.64]);
  });

  it('counts once what both ports of a unit in line list', () => {
    const port = { protocol: 'nmea2000', sends: [127250] } as const;
    const units = { middle: { ports: { a: port, b: port }, inLine: ['a', 'b'] as [string, string] } };
    expect(loadOf(wired({ units, joins: { nav: ['middle.a', 'middle.b'] } })).worstPct).toBeCloseTo(0.64, 6);
  });

  it('never falls when a message is added or sent more often', () => {
    const said = fc.record({
      pgn: fc.constantFrom(127250, 129029, 127505, 129540),
      everyMs: fc.integer({ min: 50, max: 5000 }),
    });
    fc.assert(
      fc.property(fc.array(said, { minLength: 1, maxLength: 6 }), said, (list, more) => {
        const before = worst({ unit: sender(...list) });
        expect(worst({ unit: sender(...list, more) })).toBeGreaterThan(before);
        const faster = list.map((sent, at) => (at === 0 ? { ...sent, everyMs: sent.everyMs / 2 } : sent));
        expect(worst({ unit: sender(...faster) })).toBeGreaterThan(before);
      }),
      { numRuns: 50 },
    );
  });
});
