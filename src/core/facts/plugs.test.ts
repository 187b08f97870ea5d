import { describe, expect, it } from 'vitest';
import { ethernetPlugs } from './ethernet-plugs.ts';
import { busPins, genericLeadColours, plugNotes, screwTerminalPins } from './plugs.ts';

const at = (table: { readonly pins: readonly { pin: number; signal: string }[] }, pin: number): string | undefined =>
  table.pins.find((row) => row.pin === pin)?.signal;

describe('the pins of a bus plug', () => {
  it('are 1 shield, 2 +12 V, 3 0 V, 4 CAN high, 5 CAN low (several public installation handbooks agree)', () => {
    expect(busPins.pins.map(({ signal }) => signal)).toEqual(['shield', '+12 V', '0 V', 'CAN high', 'CAN low']);
    expect(busPins.pins.map(({ colour }) => colour)).toEqual(['bare', 'red', 'black', 'white', 'blue']);
  });

  it('are numbered otherwise on the screw terminal, all but CAN high: 1 there is 0 V, not the shield (GE OKCV3000, p 53)', () => {
    const same = [1, 2, 3, 4, 5].filter((pin) => at(busPins, pin) === at(screwTerminalPins, pin));
    expect(same).toEqual([4]);
    expect(at(screwTerminalPins, 1)).toBe('0 V');
    expect(at(screwTerminalPins, 5)).toBe('+12 V');
  });

  it('have the same colour for the same wire in both tables', () => {
    const colours = (table: typeof busPins | typeof screwTerminalPins) =>
      new Map<string, string>(table.pins.map(({ signal, colour }) => [signal, colour]));
    expect(colours(screwTerminalPins)).toEqual(
      new Map(screwTerminalPins.pins.map(({ signal }) => [signal, colours(busPins).get(signal)])),
    );
  });

  it('meet none of their own colours in a generic sensor lead (Beckhoff EP6001)', () => {
    const bus = busPins.pins.map(({ colour }): string => colour);
    const same = genericLeadColours.pins.filter(({ colour }, n) => colour === bus[n]);
    expect(same).toEqual([]);
  });
});

describe('the notes on plugs', () => {
  it('are whole sentences and warn of colours, hidden terminators and units in line', () => {
    for (const { says } of plugNotes) expect(says).toMatch(/^[A-Z].*\.$/);
    const abouts = plugNotes.map(({ about }): string => about);
    for (const about of ['moulded power leads', 'hidden terminators', 'unit with two bus ports in line'])
      expect(abouts).toContain(about);
  });
});

describe('M12 plugs for Ethernet', () => {
  it('D-coded 1, 2, 3, 4 go to RJ45 1, 3, 2, 6 (BB-54; SICK DT1000 p 46, Datalogic Matrix 410 p 74)', () => {
    expect(ethernetPlugs['m12-d'].toRj45.map(({ rj45 }) => rj45)).toEqual([1, 3, 2, 6]);
    expect(ethernetPlugs['m12-d'].toRj45.map(({ signal }) => signal)).toEqual(['TX+', 'RX+', 'TX-', 'RX-']);
  });

  it('X-coded use each of the eight RJ45 pins once (Framos D435e, p 11)', () => {
    const pins = ethernetPlugs['m12-x'].toRj45.map(({ rj45 }) => rj45);
    expect(pins).toEqual([1, 2, 3, 6, 7, 8, 5, 4]);
    expect(new Set(pins).size).toBe(8);
  });
});
