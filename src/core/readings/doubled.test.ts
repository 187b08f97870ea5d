import { describe, expect, it } from 'vitest';
import { indexBoat } from '../boat/boat-index.ts';
import { joinsOf } from '../joins/joins-of.ts';
import { doubledSources } from './doubled.ts';
import { refitOf } from './refit.ts';
import { type Sketch, turn, type UnitSketch, wired } from './wired.test-helper.ts';

const doubledOn = (sketch: Sketch) => {
  const index = indexBoat(wired(sketch));
  return doubledSources(refitOf(index, (phase) => joinsOf(index, phase)).reachesIn(1));
};
const sender = (...sends: NonNullable<UnitSketch['ports'][string]['sends']>): UnitSketch => ({
  ports: { n2k: { protocol: 'nmea2000', sends } },
});

describe('one reading from several units on one bus', () => {
  it('is found where two engine gateways have one number (planted fault 43), and not where they differ', () => {
    const gateways = (port: number, starboard: number): Sketch => ({
      units: {
        port: sender({ pgn: 127488, instance: port }, { pgn: 127489, instance: port }),
        starboard: sender({ pgn: 127488, instance: starboard }),
      },
      joins: { nav: ['port.n2k', 'starboard.n2k'] },
    });
    expect(doubledOn(gateways(0, 0))).toEqual([
      { bus: 'nav', reading: 'engine', instance: 0, ports: ['port.n2k', 'starboard.n2k'] },
    ]);
    expect(doubledOn(gateways(0, 1))).toEqual([]);
  });

  it('is found for two position sources without a number (planted fault 44)', () => {
    expect(
      doubledOn({ units: { a: sender(129025, 129029), b: sender(129025) }, joins: { nav: ['a.n2k', 'b.n2k'] } }),
    ).toEqual([{ bus: 'nav', reading: 'position', ports: ['a.n2k', 'b.n2k'] }]);
  });

  it('is not found on two buses, nor behind a converter that is given nothing', () => {
    const conv: UnitSketch = {
      ports: { in: { protocol: 'nmea0183', hears: ['GLL'] }, n2k: { protocol: 'nmea2000', sends: [129025] } },
      turns: [turn('in', 'n2k', 'position')],
    };
    const gps: UnitSketch = { ports: { out: { protocol: 'nmea0183', sends: ['GLL'] } } };
    const units = { a: sender(129025), b: sender(129025), conv, gps };
    expect(doubledOn({ units, joins: { nav: ['a.n2k', 'conv.n2k'], ship: ['b.n2k'] } })).toEqual([]);
    expect(doubledOn({ units, joins: { nav: ['a.n2k', 'conv.n2k'], wire: ['gps.out', 'conv.in'] } })).toEqual([
      { bus: 'nav', reading: 'position', ports: ['a.n2k', 'conv.n2k'] },
    ]);
  });
});
