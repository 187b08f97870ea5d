import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import type { Sends } from '../boat/sheet.ts';
import { shipsHeard } from '../facts/waters.ts';
import { joinsOf } from '../joins/joins-of.ts';
import { type PortSketch, type Sketch, turn, type UnitSketch, wired } from '../readings/wired.test-helper.ts';
import { worstLoadPct } from './bus-load.ts';
import { busSenders } from './bus-senders.ts';

const sendersOn = (boat: Boat, bus = 'nav') => {
  const index = indexBoat(boat);
  return busSenders(index, bus, joinsOf(index, 1));
};
const sentOn = (boat: Boat, bus = 'nav') => sendersOn(boat, bus).flatMap(({ messages }) => messages);
const loadOn = (boat: Boat, bus = 'nav'): number => worstLoadPct(sentOn(boat, bus));

const bus = (port: Omit<PortSketch, 'protocol'>): PortSketch => ({ protocol: 'nmea2000', ...port });
const sender = (...sends: (number | Sends)[]): UnitSketch => ({ ports: { n2k: bus({ sends }) } });

/** A bridge that passes heading and position on from the navigation bus to the ship’s bus. */
const bridge: UnitSketch = {
  ports: { a: bus({ hears: [127250, 129025, 127505] }), b: bus({ sends: [127250, 129025] }) },
  turns: [turn('a', 'b', 'heading', 'position')],
};
const bridged = (units: Record<string, UnitSketch>, more: Partial<Sketch['joins']> = {}): Boat =>
  wired({
    units: { ...units, bridge },
    joins: { nav: [...Object.keys(units).map((id) => `${id}.n2k`), 'bridge.a'], ship: ['bridge.b'], ...more },
  });

describe('a bridge', () => {
  it('puts on the other bus what it hears and may send there, as often as it comes, and nothing else', () => {
    const boat = bridged({ compass: sender({ pgn: 127250, everyMs: 50 }), tanks: sender(127505), log: sender(128259) });
    expect(sentOn(boat, 'ship')).toMatchObject([{ pgn: 127250, everyMs: 50, rate: 'passed', from: 'compass.n2k' }]);
    expect(loadOn(boat, 'ship')).toBeCloseTo(1.28, 6);
  });

  it('repeats each of two senders, and sends nothing where nothing comes in', () => {
    const two = bridged({ one: sender(127250), other: sender(127250) });
    expect(sentOn(two, 'ship').map(({ from }) => from)).toEqual(['one.n2k', 'other.n2k']);
    expect(sentOn(bridged({ log: sender(128259) }), 'ship')).toEqual([]);
  });

  it('adds nothing to the bus it listens to', () => {
    const boat = bridged({ compass: sender(127250) });
    expect(loadOn(boat)).toBeCloseTo(0.64, 6);
  });

  it('repeats no faster than its own sheet says', () => {
    const slow: UnitSketch = {
      ports: { a: bus({ hears: [127250] }), b: bus({ sends: [{ pgn: 127250, everyMs: 1000 }] }) },
      turns: [turn('a', 'b', 'heading')],
    };
    const boat = wired({
      units: { compass: sender(127250), slow },
      joins: { nav: ['compass.n2k', 'slow.a'], ship: ['slow.b'] },
    });
    expect(sentOn(boat, 'ship')).toMatchObject([{ everyMs: 1000 }]);
  });

  it('that goes round with another comes to an end', () => {
    const back: UnitSketch = {
      ports: { a: bus({ sends: [127250] }), b: bus({ hears: [127250] }) },
      turns: [turn('b', 'a', 'heading')],
    };
    const boat = wired({
      units: { compass: sender(127250), bridge, back },
      joins: { nav: ['compass.n2k', 'bridge.a', 'back.a'], ship: ['bridge.b', 'back.b'] },
    });
    expect(sentOn(boat).map(({ from }) => from)).toEqual(['compass.n2k', undefined]);
    expect(sentOn(boat, 'ship').map(({ from }) => from)).toEqual(['compass.n2k']);
  });
});

it('a converter puts on the bus what its sheet sends, turned in from a 0183 input', () => {
  const converter: UnitSketch = {
    ports: { in: { protocol: 'nmea0183', hears: ['DPT'] }, n2k: bus({ sends: [128267] }) },
    turns: [turn('in', 'n2k', 'depth')],
  };
  const boat = wired({ units: { converter }, joins: { nav: ['converter.n2k'] } });
  expect(sentOn(boat)).toMatchObject([{ pgn: 128267, everyMs: 1000, rate: 'usual' }]);
});

describe('reports of other ships', () => {
  const receiver = sender(129038, 129039, 129794, 129809, 129810);
  const inWaters = (waters?: Boat['waters']): Boat => {
    const boat = wired({ units: { receiver }, joins: { nav: ['receiver.n2k'] } });
    return waters === undefined ? boat : { ...boat, waters };
  };

  it('MS-40: 7.4 and 1.3 positions a second of a busy harbour take 2.701 %', () => {
    const boat = wired({ units: { receiver: sender(129038, 129039) }, joins: { nav: ['receiver.n2k'] } });
    expect(loadOn({ ...boat, waters: 'harbour' })).toBeCloseTo(2.701, 3);
  });

  it('are those of a busy harbour where the file names no waters, and fewer on a coast, and in quiet waters', () => {
    expect(loadOn(inWaters())).toBe(loadOn(inWaters('harbour')));
    const [quiet, coast, harbour] = (['quiet', 'coast', 'harbour'] as const).map((waters) => loadOn(inWaters(waters)));
    expect(quiet).toBeLessThan(coast ?? 0);
    expect(coast).toBeLessThan(harbour ?? 0);
  });

  it('come as often as the waters say, those of a second at once', () => {
    for (const { pgn, count, everyMs, rate } of sentOn(inWaters('coast'))) {
      const { classAPerS, classBPerS, classAStaticPerS, classBStaticPerS } = shipsHeard.coast;
      const perS = { 129038: classAPerS, 129039: classBPerS, 129794: classAStaticPerS }[pgn] ?? classBStaticPerS;
      expect((1000 * count) / everyMs).toBeCloseTo(perS, 9);
      expect(rate).toBe('waters');
    }
    expect(sentOn(inWaters('harbour'))[0]).toMatchObject({ pgn: 129038, count: 8 });
  });

  it('come as often as the sheet says where it does', () => {
    const boat = wired({
      units: { receiver: sender({ pgn: 129038, everyMs: 500 }) },
      joins: { nav: ['receiver.n2k'] },
    });
    expect(sentOn(boat)).toMatchObject([{ everyMs: 500, rate: 'sheet' }]);
  });
});

it('tells who says how often a message comes: usual, the sheet, or a change for this unit', () => {
  const boat = wired({ units: { unit: sender(127250, { pgn: 127251, everyMs: 50 }) }, joins: { nav: ['unit.n2k'] } });
  expect(sentOn(boat).map(({ rate }) => rate)).toEqual(['usual', 'sheet']);
  const path = 'ports.n2k.sends.127250.everyMs';
  const changes = [{ path, value: 200, how: 'seen' as const }];
  const changed = { ...boat, kit: boat.kit.map((unit) => ({ ...unit, changes })) };
  expect(sentOn(changed)).toMatchObject([
    { everyMs: 200, rate: 'changed' },
    { everyMs: 50, rate: 'sheet' },
  ]);
});

it('a sender more on one bus never makes either bus of a bridge emptier', () => {
  const said = fc.constantFrom(127250, 129025, 127505, 129038, 129540);
  const units = fc.array(fc.array(said, { maxLength: 3 }), { minLength: 1, maxLength: 4 });
  const boatOf = (list: number[][]): Boat =>
    bridged(Object.fromEntries(list.map((sends, at) => [`unit-${at}`, sender(...new Set(sends))])));
  fc.assert(
    fc.property(units, fc.array(said, { maxLength: 3 }), (list, more) => {
      const [before, after] = [boatOf(list), boatOf([...list, more])];
      for (const id of ['nav', 'ship']) expect(loadOn(after, id)).toBeGreaterThanOrEqual(loadOn(before, id) - 1e-9);
    }),
    { numRuns: 40 },
  );
});
