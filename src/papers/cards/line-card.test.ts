import { expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { cableLabels } from '../labels/cable-labels.ts';
import { cardBoat } from './card-boat.ts';
import { lineCard } from './line-card.ts';

const boat = anExample('gannet');
const planned = quickPlan(boat);
const index = cardBoat(boat);

test('the card of every cable names both ends and its length, lights its line, and tells where each label is', () => {
  const labels = cableLabels(boat, planned);
  for (const line of planned.lines) {
    const label = line.label ?? line.nextLabel ?? '';
    const card = lineCard(index, planned, label);
    const heads = card.facts.map(({ head }) => head);
    expect(heads).toEqual(expect.arrayContaining(['From', 'To', 'Length', 'Cable']));
    expect(card.title).toContain(label);
    expect(card.lights[0]).toBe(line.id);
    expect(card.labels).toEqual(labels.filter((own) => own.line === line.id).map(({ where }) => where));
  }
});

test('the card of a feed tells its fuse', () => {
  const feed = planned.feeds.find(({ fuseA }) => fuseA !== undefined);
  const line = planned.lines.find(({ id }) => id === feed?.line);
  const card = lineCard(index, planned, line?.label ?? line?.nextLabel ?? '');
  expect(card.facts).toContainEqual({ head: 'Fuse', says: `${feed?.fuseA} A` });
});

test('a label that no cable has any more says so', () => {
  const card = lineCard(index, planned, 'C999');
  expect(card.facts[0]?.says).toContain('C999');
  expect(card.lights).toEqual([]);
});
