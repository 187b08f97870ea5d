import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import { limitOf } from '../../boat/limit-of.ts';
import type { Signal } from '../../boat/sensor.ts';
import type { KitSite } from '../../boat/site.ts';
import type { SensorCheck } from '../../sensor-shape.ts';
import { leastAheadM } from './least-ahead.ts';
import { planSensor } from './plan-sensors.ts';
import { signalsFit } from './signals-fit.ts';
import { tiltVerdict } from './tilt-verdict.ts';

describe('a transducer', () => {
  it('TD-07 (several public installation books: 10, 11 or 15°): 9° is right, 11° wants a block or a tilted element', () => {
    const mostDeg = limitOf(aBoat().boat, 'transducer-tilt').value;
    expect([9, 11].map((tiltDeg) => tiltVerdict({ tiltDeg, mostDeg }))).toEqual([
      'ok',
      'fairing block or tilted element',
    ]);
  });

  it('TD-08 (one installation book): on a waterline of 10.4 m it goes 1.04 m ahead of the propeller', () => {
    expect(leastAheadM(10.4)).toBeCloseTo(1.04, 9);
  });
});

const underwater = { waterlineM: 8, propellerXM: 1, keel: { fromXM: 3, toXM: 5 } };

/** How a paddle wheel and sounder in one sits in the Tern, made a sloop, at a place and with what is known of it. */
const checksAt = (
  [xM, yM]: readonly [number, number],
  {
    site,
    hull = { underwater },
    inHull = false,
  }: { site?: KitSite; hull?: Partial<Boat['hull']>; inHull?: boolean } = {},
): ReadonlyMap<string, SensorCheck> => {
  const { boat } = aBoat().add({
    places: [{ id: 'well', name: 'well', xM, yM, zM: -0.4, exposure: 'bilge', reach: 'panel', tees: false }],
    sheets: [
      {
        id: 'dst',
        name: 'dst',
        kind: 'depth-sensor',
        source: 'typical',
        plugs: [{ id: 'lead', connector: 'leads', gender: 'none' }],
        ports: [
          {
            id: 'out',
            onPlug: 'lead',
            protocol: 'analog',
            role: 'talk',
            sends: [{ reading: 'depth' }, { reading: 'speed-water' }],
          },
        ],
        sensor: { inHull },
      },
    ],
    kit: [
      { id: 'dst-1', name: 'dst', sheet: 'dst', fate: 'comes', place: 'well', ...(site === undefined ? {} : { site }) },
    ],
  });
  const sited: Boat = { ...boat, hull: { ...boat.hull, kind: 'sloop', material: 'grp', ...hull } };
  const found = planSensor(indexBoat(sited), [], { unit: 'dst-1', is: 'depth' });
  return new Map((found?.checks ?? []).map((check): [string, SensorCheck] => [check.check, check]));
};
const verdictsAt = (...given: Parameters<typeof checksAt>): Record<string, string> =>
  Object.fromEntries([...checksAt(...given)].map(([check, { verdict }]) => [check, verdict]));

describe('a sensor in the hull', () => {
  const known: KitSite = { tiltDeg: 4, headroomMm: 120, laminate: 'solid', housing: 'new' };

  it('well ahead of propeller and keel, upright, in solid laminate, with room over it, passes everything', () => {
    expect(new Set(Object.values(verdictsAt([5.6, 0.1], { site: known })))).toEqual(new Set(['ok']));
  });

  it('is held against propeller, keel and centreline by its place', () => {
    expect(verdictsAt([1.5, 0.1], { site: known })).toMatchObject({
      'ahead-of-propeller': 'bad',
      'ahead-of-keel': 'bad',
    });
    expect(verdictsAt([4, 0.1], { site: known })).toMatchObject({ 'ahead-of-propeller': 'ok', 'from-keel': 'bad' });
    expect(verdictsAt([5.2, 0.1], { site: known })).toMatchObject({ 'from-keel': 'ok', 'ahead-of-keel': 'bad' });
    expect(verdictsAt([5.6, 1.4], { site: known })).toMatchObject({ 'off-centreline': 'bad' });
  });

  it('is asked about where nobody has said, and only where it comes', () => {
    const asked = verdictsAt([5.6, 0.1], { hull: {} });
    expect(asked).toMatchObject({
      'ahead-of-propeller': 'ask',
      'from-keel': 'ask',
      tilt: 'ask',
      headroom: 'ask',
      laminate: 'ask',
    });
  });

  it('leans on a block, and looks through the hull only where that is solid', () => {
    expect(verdictsAt([5.6, 0], { site: { ...known, tiltDeg: 14 } }).tilt).toBe('bad');
    expect(verdictsAt([5.6, 0], { site: { ...known, tiltDeg: 14, tiltBy: 'fairing-block' } }).tilt).toBe('ok');
    const ring: KitSite = { ...known, laminate: 'core-with-ring' };
    expect(verdictsAt([5.6, 0], { site: ring }).laminate).toBe('ok');
    expect(verdictsAt([5.6, 0], { site: ring, inHull: true }).laminate).toBe('bad');
    expect(verdictsAt([5.6, 0], { site: { ...known, housing: 'old' } }).housing).toBe('bad');
  });
});

describe('a bare sensor at an input', () => {
  const element: Signal = { port: 'a', frequenciesKHz: [50], powerW: 300 };

  it('of another frequency is not read', () => {
    expect(signalsFit(element, { port: 'b', frequenciesKHz: [200], powerW: 100 })).toEqual({
      misfits: [{ what: 'frequency', gives: '50 kHz', takes: '200 kHz' }],
      unknown: [],
    });
  });

  it('of two frequencies is read at the one they share, unless it is driven with more than it bears', () => {
    const two = { ...element, frequenciesKHz: [50, 200] };
    expect(signalsFit(two, { port: 'b', frequenciesKHz: [200] })).toEqual({ misfits: [], unknown: ['power'] });
    expect(signalsFit(two, { port: 'b', frequenciesKHz: [200], powerW: 600 }).misfits).toEqual([
      { what: 'power', gives: 'bears 300 W', takes: 'drives it with 600 W' },
    ]);
  });

  it('wants volts, pulses and a coding in common', () => {
    const head: Signal = {
      port: 'a',
      feed: { leastV: 6, mostV: 10 },
      pulses: { least: 5, most: 6 },
      vanes: ['sine-cosine'],
    };
    const takes: Signal = {
      port: 'b',
      feed: { leastV: 8, mostV: 8 },
      pulses: { least: 6, most: 9 },
      vanes: ['sine-cosine'],
    };
    expect(signalsFit(head, takes)).toEqual({ misfits: [], unknown: [] });
    const other: Signal = {
      port: 'b',
      feed: { leastV: 12, mostV: 12 },
      pulses: { least: 20, most: 30 },
      vanes: ['potentiometer'],
    };
    expect(signalsFit(head, other).misfits.map(({ what }) => what)).toEqual(['feed', 'pulses', 'vane']);
  });

  it('always fits one that says the same, and what neither speaks of is no matter', () => {
    const kHz = fc.array(fc.integer({ min: 20, max: 400 }), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(kHz, fc.integer({ min: 1, max: 2000 }), (frequenciesKHz, powerW) => {
        const one: Signal = { port: 'a', frequenciesKHz, powerW };
        expect(signalsFit(one, { ...one, port: 'b' })).toEqual({ misfits: [], unknown: [] });
        expect(signalsFit({ port: 'a' }, { port: 'b' })).toEqual({ misfits: [], unknown: [] });
      }),
    );
  });
});
