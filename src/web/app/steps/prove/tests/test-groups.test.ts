import { expect, test } from 'vitest';
import { aBoat } from '../../../../../core/boat/a-boat.test-helper.ts';
import { plan } from '../../../../../core/plan.ts';
import { isShown, judgedTest, testGroups } from './test-groups.ts';

const { boat } = aBoat();
const { tests } = plan(boat, new Map());
const found = new Map([
  ['dock/data-ohm:nav:end-1', 60],
  ['dock/data-ohm:nav:end-2', 120],
]);
const judged = tests.map((one) => judgedTest(one, (id) => found.get(id)));

test('tests stand under one head a bus and a kind, each once', () => {
  const groups = testGroups(boat, judged);
  expect(new Set(groups.map(({ key }) => key)).size).toBe(groups.length);
  expect(groups.flatMap((group) => group.tests)).toHaveLength(tests.length);
  expect(groups[0]).toMatchObject({ bus: 'nav', group: 'bus' });
});

test('what is still to do, what is not right, and what is at one place can be shown alone', () => {
  const shown = (place: string, what: 'all' | 'open' | 'bad') =>
    judged.filter((one) => isShown(one, { place, shown: what })).map(({ test: { id } }) => id);
  expect(shown('', 'bad')).toEqual(['dock/data-ohm:nav:end-2']);
  expect(shown('', 'open')).toHaveLength(tests.length - 2);
  const [place = ''] = tests.flatMap((one) => one.place ?? []);
  expect(shown(place, 'all').length).toBeGreaterThan(0);
  expect(shown(place, 'all').length).toBeLessThan(tests.length);
});
