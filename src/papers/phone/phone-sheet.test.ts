import { expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { applyEdits } from '../../core/boat/history.ts';
import { startHistory } from '../../core/boat/start-history.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import { phoneSheet } from './phone-sheet.ts';

const inOrder = (ids: readonly string[]): string[] => [...ids].sort(byCodeUnit);

const gannet = anExample('gannet');
const planned = quickPlan(gannet);
const sheet = phoneSheet(gannet, planned);

test('a phone is given every test of the plan, every place of the boat and every way once', () => {
  expect(sheet.tests.map(({ id }) => id)).toEqual(planned.tests.map(({ id }) => id));
  const places = sheet.stops.map(({ place }) => place);
  expect(inOrder(places)).toEqual(inOrder(gannet.places.map(({ id }) => id)));
  const ways = sheet.stops.flatMap((stop) => stop.ways.map(({ id }) => id));
  expect(inOrder(ways)).toEqual(inOrder(gannet.ways.map(({ id }) => id)));
});

test('each test says what is done and what it should read, and each length stands in both units', () => {
  for (const { what, expect: expected } of sheet.tests) {
    expect(what.length).toBeGreaterThan(3);
    expect(expected.length).toBeGreaterThan(1);
  }
  for (const { length } of sheet.stops.flatMap(({ ways }) => ways)) {
    expect(length).toMatch(/^\d+\.\d\d m \(.*(ft|in).*\), (taped|papers|guessed)$/);
  }
});

test('every caution that is named can be read', () => {
  const jobs = (sheet.work?.days ?? []).flatMap((day) => day.jobs);
  const named = new Set([...sheet.stops, ...jobs].flatMap(({ cautions }) => cautions));
  expect(inOrder(Object.keys(sheet.cautions))).toEqual(inOrder([...named]));
});

test('what a phone is given is small, and holds no serial number and nothing that is set in a unit', () => {
  const unit = gannet.kit[0]?.id ?? '';
  const { boat } = applyEdits(startHistory(gannet), [
    {
      edit: 'note-aboard',
      params: { unit, serial: 'SECRET-77', settings: [{ name: 'own name', value: 'hidden-value' }] },
    },
  ]);
  const text = JSON.stringify(phoneSheet(boat, planned));
  expect(text).not.toContain('SECRET-77');
  expect(text).not.toContain('hidden-value');
  expect(JSON.stringify(sheet).length).toBeLessThan(120_000);
});
