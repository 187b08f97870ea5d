import { describe, expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { boatLog } from '../../core/log/boat-log.ts';
import type { LogEntry } from '../../core/log/log-entry.ts';
import { busDiagnosis } from '../../core/proof/dock/bus-diagnosis.ts';
import { foundOf } from '../../core/proof/dock/found-of.ts';
import { type Found, judge } from '../../core/proof/dock/judge.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { causeSays, rangeWords, searchWords } from './cause-words.ts';
import { judgedWords } from './judged-words.ts';
import { printReading, printWindow } from './print-reading.ts';
import { testList } from './test-list.ts';
import { expectWords, testWords } from './test-words.ts';
import { trialSigns } from './trial-words.ts';

const boat = anExample('gannet');
const planned = quickPlan(boat);
const index = cardBoat(boat);
const [bus] = planned.buses;
if (bus === undefined) throw new Error('The Gannet has a bus.');

test('readings are said in the unit a meter shows, an open circuit as open', () => {
  expect([0.4, 58.94, 8200, 1_500_000, 1e9].map((ohm) => printReading(ohm, 'ohm'))).toEqual([
    '0.4 Ω',
    '58.9 Ω',
    '8.2 kΩ',
    '1.5 MΩ',
    'open',
  ]);
  expect(printReading(-12.345, 'V')).toBe('−12.35 V');
  expect(printWindow({ least: 1_000_000 }, 'ohm')).toBe('at least 1 MΩ');
  expect(printWindow({ most: 0 }, 'errors')).toBe('none');
});

describe.each(['gannet', 'bonxie', 'sandpiper', 'wreck'])('the tests of %s in words', (name) => {
  const own = anExample(name);
  const { tests } = quickPlan(own);
  const cards = cardBoat(own);

  test('each say what is done and what is expected, without an id or a hole in them', () => {
    for (const one of tests) {
      const [what, expected] = [testWords(cards, one), expectWords(cards, one)];
      expect(what.length, one.id).toBeGreaterThan(8);
      expect(expected, one.id).not.toBe('');
      expect(`${what} ${expected}`, one.id).not.toMatch(/undefined|NaN|Infinity|at $|at ,/);
    }
  });

  test('no two are called alike at one place', () => {
    const called = tests.map((one) => `${testWords(cards, one)} ${one.place ?? ''} ${one.about.join()}`);
    expect(new Set(called).size).toBe(called.length);
  });
});

test('a verdict says by how much and against which limit', () => {
  const ohm = planned.tests.find(({ id }) => id === 'dock/data-ohm:nav:end-1');
  if (ohm === undefined) throw new Error('The bus of the Gannet has an end.');
  const said = (found: Found): string =>
    judgedWords(
      ohm,
      found,
      judge(ohm, found, () => undefined),
    );
  expect(said(60)).toBe('Right.');
  expect(said(120)).toBe('Wrong: 50 Ω over the 70 Ω that passes.');
  expect(said(68)).toMatch(/^In doubt: it passes, but is 4\.\d Ω over the 63\.\d Ω this boat should read\.$/);
});

test('causes are told with place, share and cure, and the next measurement with what it reads under each', () => {
  const found = new Map<string, Found>([
    ['dock/data-ohm:nav:end-1', 1],
    ['dock/data-ohm:nav:end-2', 2.6],
  ]);
  const { causes, next } = busDiagnosis(bus, (id) => found.get(id));
  const [first] = causes;
  if (first === undefined) throw new Error('Something is wrong with it.');
  expect(causeSays(index, bus, first).says).toMatch(/^The data wires are shorted \(it fits best near .+\)\.$/);
  for (const cause of causes) expect(causeSays(index, bus, cause).mends.length).toBeGreaterThan(5);
  for (const { range } of next?.expects ?? []) expect(rangeWords(range)).not.toBe('');
  expect(Object.keys(searchWords)).toEqual(['plug-ohm', 'steady']);
});

test('the list of tests has what was found, with a sign that needs no colour', () => {
  const line: LogEntry = {
    kind: 'reading',
    id: 'reading0001',
    at: '2027-06-01T10:00:00Z',
    test: 'dock/errors:nav',
    value: 3,
  };
  const log = boatLog([line]);
  const { rows, columns } = testList(boat, planned, log);
  const at = columns.findIndex(({ id }) => id === 'found');
  expect(rows.flatMap((row) => row[at] ?? [])).toEqual(['✗ 3, wrong']);
  expect(foundOf(log.readings)('dock/errors:nav')).toBe(3);
  expect(new Set(Object.values(trialSigns)).size).toBe(Object.keys(trialSigns).length);
});
