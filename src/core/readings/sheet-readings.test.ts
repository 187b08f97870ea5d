import { describe, expect, it } from 'vitest';
import type { Sheet } from '../boat/sheet.ts';
import { typicalSheets } from '../facts/sheets/index.ts';
import { sheetReadings } from './sheet-readings.ts';

const of = (id: string) => {
  const sheet = typicalSheets.find((one) => one.id === id);
  if (sheet === undefined) throw new Error(`no sheet ${id}`);
  return sheetReadings(sheet);
};

const bare: Sheet = { id: 'a-sheet', name: 'A sheet', kind: 'display', source: 'typical', plugs: [], ports: [] };

describe('what a sheet says and hears', () => {
  it('a masthead wind sensor says apparent wind, and no true wind that it cannot know', () => {
    expect(of('wind-sensor-bus').says).toContain('wind-apparent');
    expect(of('wind-sensor-bus').says).not.toContain('wind-true');
  });

  it('a display that works out true wind says so', () => {
    expect(of('multifunction-display-10').says).toContain('wind-true');
  });

  it('a converter says what its turns carry and hears what it is joined to', () => {
    const { says, hears } = of('converter-analog-rudder');
    expect([says, hears]).toEqual([['rudder'], ['rudder']]);
  });

  it('a tank sender of one kind does not say the other', () => {
    const sends = [{ pgn: 127505, everyMs: 2500 }, { reading: 'fuel-level' as const }];
    const port = { id: 'n2k', protocol: 'nmea2000' as const, role: 'talk' as const, sends };
    expect(sheetReadings({ ...bare, ports: [port] }).says).toEqual(['fuel-level']);
  });

  it('a unit without data says and hears nothing', () => {
    expect(sheetReadings(bare)).toEqual({ says: [], hears: [] });
  });
});
