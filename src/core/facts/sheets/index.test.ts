import { describe, expect, test } from 'vitest';
import { checkSheet } from '../../boat/checks/check-sheet.ts';
import { type Sheet, sheetSchema } from '../../boat/sheet.ts';
import { pgnInfo } from '../pgns.ts';
import { sentenceInfo } from '../sentences.ts';
import { typicalSheets } from './index.ts';

const each = typicalSheets.map((sheet): [string, Sheet] => [sheet.id, sheet]);

describe('typical sheets', () => {
  test('every sheet has its own id and says it is typical', () => {
    expect(new Set(typicalSheets.map((sheet) => sheet.id)).size).toBe(typicalSheets.length);
    for (const sheet of typicalSheets)
      expect([sheet.source, sheet.name]).toEqual(['typical', expect.stringMatching(/typical$/)]);
  });

  test('no id is a plain word that somebody will give a unit: ids are unique across a boat file', () => {
    expect(typicalSheets.map((sheet) => sheet.id).filter((id) => !id.includes('-'))).toEqual([]);
  });

  test('there is one for everything a small craft carries: 100 and more', () => {
    expect(typicalSheets.length).toBeGreaterThanOrEqual(100);
  });

  test.each(each)('%s holds together as the sheet of a boat file must', (_id, sheet) => {
    expect(checkSheet(sheet, [])).toEqual([]);
  });

  test.each(each)('%s: only sentences that are known', (_id, sheet) => {
    const said = sheet.ports.flatMap((port) => [...(port.sends ?? []), ...(port.hears ?? [])]);
    const letters = said.flatMap(({ sentence }) => (sentence === undefined ? [] : [sentence]));
    expect(letters.filter((one) => sentenceInfo(one) === undefined)).toEqual([]);
  });

  test.each(each)('%s: what takes its own supply says how much, and its fuse carries it', (_id, sheet) => {
    const isFed = sheet.ports.some((port) => port.protocol === 'dc' && port.role !== 'talk');
    const load = (sheet.power ?? []).find(({ port }) => port === 'dc');
    expect(isFed).toBe(load !== undefined);
    if (load?.fuseA === undefined) return;
    const mostA = load.unit === 'A' ? load.max : load.max / Math.max(load.minV, 12);
    expect(load.fuseA).toBeGreaterThanOrEqual(mostA);
  });

  test.each(each)('%s fits the form of a sheet and names its sources', (_id, sheet) => {
    expect(sheetSchema.safeParse(sheet).error).toBeUndefined();
    expect(sheet.sourceNote).toMatch(/^Typical of its kind; the maker's sheet wins\. ./);
  });

  test.each(each)('%s: plugs and ports are told apart, and every port named exists', (_id, sheet) => {
    const ports = sheet.ports.map((port) => port.id);
    const ids = [...ports, ...sheet.plugs.map((plug) => plug.id)];
    expect(new Set(ids).size).toBe(ids.length);
    const named = [
      ...sheet.plugs.flatMap((plug) => (plug.conductors ?? []).flatMap((conductor) => conductor.ports)),
      ...(sheet.turns ?? []).flatMap((turn) => [turn.fromPort, turn.toPort]),
      ...(sheet.together ?? []).flat(),
      ...(sheet.power ?? []).map((load) => load.port),
    ];
    expect(named.filter((port) => !ports.includes(port))).toEqual([]);
    const wired = sheet.ports.filter((port) => port.protocol !== 'wifi');
    expect(wired.filter((port) => !sheet.plugs.some((plug) => plug.id === port.onPlug))).toEqual([]);
  });

  test.each(each)('%s: only known messages, each at its usual interval', (_id, sheet) => {
    for (const sent of sheet.ports.flatMap((port) => port.sends ?? [])) {
      if (sent.pgn !== undefined) expect([sent.pgn, pgnInfo(sent.pgn)?.everyMs]).toEqual([sent.pgn, sent.everyMs]);
    }
    const heard = sheet.ports
      .flatMap((port) => port.hears ?? [])
      .flatMap(({ pgn }) => (pgn === undefined ? [] : [pgn]));
    expect(heard.filter((pgn) => pgnInfo(pgn) === undefined)).toEqual([]);
  });

  test.each(each)('%s: what it draws from the bus fits its load number of 50 mA steps', (_id, sheet) => {
    for (const port of sheet.ports.filter(({ protocol }) => protocol === 'nmea2000')) {
      const drawn = (sheet.power ?? []).find((load) => load.port === port.id)?.max ?? 0;
      expect(Math.round(drawn * 1000)).toBeLessThanOrEqual((port.len ?? 0) * 50);
    }
    for (const load of sheet.power ?? []) expect(load.typical).toBeLessThanOrEqual(load.max);
  });
});
