import { describe, expect, it } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { joinsOf } from '../joins/joins-of.ts';
import { drawOf, type UnitLoad, unitLoads } from './unit-loads.ts';

const loadsOf = (boat: Boat): readonly UnitLoad[] => {
  const index = indexBoat(boat);
  return unitLoads(index, 1, joinsOf(index, 1));
};
const loadAt = (boat: Boat, port: string): UnitLoad | undefined => loadsOf(boat).find((load) => load.port === port);

describe('what a unit draws', () => {
  it('is its watts at any volts, or its amperes, as it behaves', () => {
    expect(drawOf({ behaves: 'power', unit: 'W' }, 18, 12)).toBe(18);
    expect(drawOf({ behaves: 'power', unit: 'A', atV: 13.8 }, 2, 12)).toBeCloseTo(27.6, 9);
    expect(drawOf({ behaves: 'power', unit: 'A' }, 1.5, 12)).toBe(18);
    expect(drawOf({ behaves: 'current', unit: 'A' }, 6, 24)).toBe(6);
    expect(drawOf({ behaves: 'current', unit: 'W' }, 48, 24)).toBe(2);
  });

  it('is told at the lowest volts: a spec line of 1.5 A at 12 V is 1.8 A at 10 V (PW-49)', () => {
    expect(loadAt(aBoat().boat, 'display.dc')).toMatchObject({ mostA: 1.8, typicalA: 1.2, nominalV: 12 });
  });

  it('comes from a circuit or from the bus, each port from one of them', () => {
    const { boat } = aBoat();
    expect(loadAt(boat, 'display.dc')?.source).toEqual({ by: 'circuit', panel: 'main-panel', circuit: 'helm-circuit' });
    expect(loadAt(boat, 'display.n2k')?.source).toEqual({ by: 'bus', bus: 'nav' });
    expect(loadsOf(boat).every(({ from }) => from === 'house')).toBe(true);
  });

  it('comes from nothing where the file does not say what feeds it', () => {
    const { boat } = aBoat().change((draft) => {
      for (const { circuits } of draft.supply.panels) for (const circuit of circuits) circuit.feeds = [];
    });
    expect(loadAt(boat, 'radio.dc')).toMatchObject({ source: { by: 'nothing' } });
    expect(loadAt(boat, 'radio.dc')?.from).toBeUndefined();
  });

  it('has a peak where the sheet gives one', () => {
    const { boat } = aBoat().sheet('fixed-radio', (sheet) => {
      for (const power of sheet.power ?? []) power.peak = 9;
    });
    expect(loadAt(boat, 'radio.dc')?.peakA).toBe(9);
  });

  it('of a drive is drawn by its computer, and of a head by what its own lead ends at, however many leads lie between', () => {
    const lead = (id: string, a: string, b: string) => ({
      id,
      kind: 'single-wire' as const,
      members: [
        { kit: a, port: 'wire', as: 'talk' as const },
        { kit: b, port: 'wire', as: 'listen' as const },
      ],
      hold: 'fixed' as const,
    });
    const wired = { id: 'wire', onPlug: 'lead', protocol: 'single-wire' as const, role: 'both' as const };
    const head = {
      port: 'wire',
      typical: 0.1,
      max: 0.2,
      unit: 'A' as const,
      behaves: 'current' as const,
      minV: 10,
      maxV: 16,
    };
    const plug = { id: 'lead', connector: 'leads', gender: 'none' as const };
    const { boat } = aBoat()
      .sheet('fixed-radio', (sheet) => {
        sheet.plugs.push(plug);
        sheet.ports.push(wired);
      })
      .add({
        sheets: [
          {
            id: 'head',
            name: 'Head',
            kind: 'pilot-head',
            source: 'typical',
            plugs: [plug],
            ports: [wired],
            power: [head],
          },
        ],
        kit: ['head-one', 'head-two'].map((id) => ({ id, name: id, sheet: 'head', fate: 'stays', place: 'helm' })),
        joins: [lead('a-lead', 'head-two', 'head-one'), lead('b-lead', 'head-one', 'radio')],
      });
    expect(loadAt(boat, 'head-one.wire')?.source).toEqual({ by: 'unit', port: 'radio.dc' });
    expect(loadAt(boat, 'head-two.wire')?.source).toEqual({ by: 'unit', port: 'radio.dc' });
  });
});
