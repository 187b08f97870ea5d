import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { plan } from '../../core/plan.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import { foundSubjects } from './found-subjects.ts';

const { boat } = aBoat();
const planned = plan(boat, new Map());

test('lines are found by their labels, each once, and wires are those the plan chooses the copper of', () => {
  const { lines, wires } = foundSubjects(boat, planned);
  expect(lines.map(({ id }) => id).sort()).toEqual(planned.lines.map(({ id }) => id).sort());
  const labels = planned.lines.map(({ label, nextLabel = '' }) => label ?? nextLabel);
  expect(lines.map(({ says }) => says.slice(0, 3))).toEqual(labels.toSorted(byCodeUnit));
  expect(wires.map(({ id }) => id).sort()).toEqual(planned.feeds.map(({ line }) => line).sort());
});

test('what goes ashore is not found, and a circuit says what protects it', () => {
  const [gone] = boat.kit;
  const { units, circuits } = foundSubjects(aBoat().unit(gone?.id ?? '', { fate: 'goes' }).boat, planned);
  expect(units).toHaveLength(boat.kit.length - 1);
  const [panel] = boat.supply.panels;
  const [circuit] = panel?.circuits ?? [];
  expect(circuits[0]).toEqual({
    id: `${panel?.id}.${circuit?.id}`,
    says: `${circuit?.name ?? circuit?.id}, ${circuit?.ratingA} A, panel ${panel?.id}`,
  });
});
