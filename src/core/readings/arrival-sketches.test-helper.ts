import { expect } from 'vitest';
import { arriving, type Sketch, turn, type UnitSketch, wired } from './wired.test-helper.ts';

export const sounder = (sentence: string, more: Partial<UnitSketch['ports'][string]> = {}): UnitSketch => ({
  ports: { out: { protocol: 'nmea0183', sends: [{ sentence, everyMs: 1000 }], ...more } },
});
export const inward = (...hears: string[]): UnitSketch => ({
  ports: {
    in: { protocol: 'nmea0183', hears },
    n2k: { protocol: 'nmea2000', sends: [128267, 127245, 127250, 127488], hears: [] },
  },
  turns: [turn('in', 'n2k', 'depth', 'rudder', 'heading', 'engine')],
});
export const outward = (...sends: (string | { sentence: string; everyMs: number })[]): UnitSketch => ({
  ports: {
    n2k: { protocol: 'nmea2000', sends: [], hears: [128267, 127245, 127250, 127488] },
    out: { protocol: 'nmea0183', sends },
  },
  turns: [turn('n2k', 'out', 'depth', 'rudder', 'heading', 'engine')],
});
export const screen: UnitSketch = {
  ports: { n2k: { protocol: 'nmea2000', sends: [], hears: [128267, 127245, 127250, 127488, 129025] } },
};
export const old = (...hears: string[]): UnitSketch => ({ ports: { in: { protocol: 'nmea0183', hears } } });

export const one = (sketch: Sketch, phase?: number) => {
  const [entry, ...more] = arriving(wired(sketch), phase);
  expect(more).toEqual([]);
  return entry;
};
