import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findSheets } from './find-sheets.ts';
import { typicalSheets } from './index.ts';
import { plainWords } from './plain-words.ts';

const ids = (text: string): string[] => findSheets(text).map(({ sheet }) => sheet.id);

describe('finding a sheet in plain words', () => {
  test.each([
    ['thing that hears ships', ['ais-class-b', 'ais-class-a', 'ais-receiver']],
    ['walkie-talkie', ['vhf-handheld']],
    ['fog horn', ['hailer-fog']],
    ['how full is the battery', ['battery-shunt-bus']],
    ['looks ahead', ['sonar-module-fls']],
    ['the box that steers', ['pilot-computer-bus', 'pilot-computer-0183']],
    ['heading', ['heading-sensor-bus']],
    ['wind', ['wind-sensor-bus']],
    ['pilot head', ['pilot-head-bus']],
    ['position antenna', ['gnss-antenna-bus']],
    ['old pilot head', ['pilot-head-maker']],
  ])('"%s" finds first %s', (text, first) => {
    expect(ids(text).slice(0, first.length)).toEqual(first);
  });

  test.each([
    ['screen', 'multifunction-display-12'],
    ['screens', 'multifunction-display-12'],
    ['gps', 'gnss-antenna-bus'],
    ['AUTOPILOT', 'pilot-computer-bus'],
    ['fish finder', 'sounder-module'],
    ['9 inch', 'multifunction-display-9'],
    ['wind', 'wind-sensor-bus'],
    ['vhf', 'vhf-dsc-bus'],
    ['fuel gauge', 'tank-sender-resistive'],
  ])('"%s" finds %s', (text, id) => {
    expect(ids(text)).toContain(id);
  });

  test('a word more narrows it: every old radar is a radar, and no new one is old', () => {
    const [old, all] = [ids('old radar'), ids('radar')];
    expect(all).toEqual(expect.arrayContaining(old));
    expect(all).toContain('radar-dome-24');
    expect(old).not.toContain('radar-dome-24');
  });

  test('nothing, small words and nonsense find nothing', () => {
    for (const text of ['', '   ', 'the', 'xyzzy', '!?']) expect(ids(text)).toEqual([]);
  });

  test('every plain word finds its own sheet', () => {
    for (const [id, phrases] of Object.entries(plainWords))
      for (const phrase of phrases) expect([phrase, ids(phrase).includes(id)]).toEqual([phrase, true]);
  });

  test('every sheet has plain words, and every plain word a sheet', () => {
    expect(Object.keys(plainWords).toSorted((a, b) => (a < b ? -1 : 1))).toEqual(
      typicalSheets.map(({ id }) => id).toSorted((a, b) => (a < b ? -1 : 1)),
    );
  });

  test('sheets of one’s own come first, and answer to the plain words of their kind', () => {
    const [typical] = typicalSheets.filter(({ id }) => id === 'vhf-dsc-bus');
    if (typical === undefined) throw new Error('no such sheet');
    const own = { ...typical, id: 'my-set', name: 'The set of the last boat', source: 'manual' as const };
    const found = findSheets('radio', [own]);
    expect(found[0]?.sheet).toBe(own);
    expect(found.slice(1).map(({ sheet }) => sheet.id)).toEqual(ids('radio'));
    expect(findSheets('radar', [own]).some(({ sheet }) => sheet === own)).toBe(false);
  });

  test('any text gives each sheet at most once, best first', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const found = findSheets(text);
        expect(new Set(found.map(({ sheet }) => sheet.id)).size).toBe(found.length);
        for (const [at, { score }] of found.entries()) expect(score).toBeLessThanOrEqual(found[at - 1]?.score ?? score);
      }),
      { numRuns: 100 },
    );
  });
});
