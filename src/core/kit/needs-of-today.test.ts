import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { applyEdits } from '../boat/history.ts';
import { startHistory } from '../boat/start-history.ts';
import { plan } from '../plan.ts';
import { needsOfToday } from './needs-of-today.ts';
import { replaceUnit } from './replace-unit.ts';
import { typical } from './sloop.test-helper.ts';
import { usualNeeds } from './usual-needs.ts';

const old = aBoat().change((boat) => {
  for (const unit of boat.kit) unit.fate = 'stays';
  boat.needs = [];
}).boat;

const seen = (boat: typeof old) => needsOfToday(boat, plan(boat, new Map()).before);

test('what stays is wanted where it is seen today', () => {
  expect(seen(old).map(({ reading, at, must }) => [reading, at, must])).toEqual([
    ['position', 'display', true],
    ['position', 'radio', true],
    ['course-speed-ground', 'display', true],
    ['time-date', 'display', true],
    ['heading', 'display', true],
    ['rate-of-turn', 'display', true],
  ]);
});

test('what the old screen showed is wanted at the one that comes in its place', () => {
  const made = replaceUnit(old, 'display', typical('multifunction-display-9'));
  const boat = applyEdits(startHistory(old), made?.edits ?? []).boat;
  const found = seen({ ...boat, needs: [] });
  expect(new Set(found.map(({ at }) => at))).toEqual(new Set([made?.unit.id, 'radio']));
  expect(found.filter(({ at }) => at !== 'radio')).toHaveLength(5);
});

test('what is asked for already is not asked for twice, and what nobody understands is left out', () => {
  const asked = { ...old, needs: seen(old) };
  expect(seen(asked)).toEqual([]);
  const gone = aBoat()
    .with({ needs: [] })
    .change((boat) => {
      for (const unit of boat.kit) unit.fate = unit.id === 'display' ? 'goes' : 'stays';
    }).boat;
  expect(seen(gone).map(({ at }) => at)).toEqual(['radio']);
});

test('the usual needs of a screen are those it does not have yet', () => {
  expect(usualNeeds(aBoat().boat, 'display').map(({ reading, must }) => [reading, must])).toEqual([
    ['course-speed-ground', true],
    ['time-date', false],
  ]);
  expect(usualNeeds(aBoat().boat, 'nobody')).toEqual([]);
});
