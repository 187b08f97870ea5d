import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { anOpening } from '../boat/an-opening.test-helper.ts';
import { applyEdits, undo } from '../boat/history.ts';
import { startHistory } from '../boat/start-history.ts';
import { copyUnit } from './copy-unit.ts';
import { replaceUnit } from './replace-unit.ts';
import { typical } from './sloop.test-helper.ts';

const screen = typical('multifunction-display-9');

test('one goes, another comes to its place and takes over what was wanted there, as one step', () => {
  const { boat } = aBoat().unit('display', { fate: 'stays' });
  const made = replaceUnit(boat, 'display', screen);
  const history = applyEdits(startHistory(boat), made?.edits ?? [], made?.says);
  const [old, next] = [
    history.boat.kit.find(({ id }) => id === 'display'),
    history.boat.kit.find(({ id }) => id === made?.unit.id),
  ];
  expect([old?.fate, next?.fate, next?.place]).toEqual(['goes', 'comes', 'helm']);
  expect(history.boat.needs.filter(({ at }) => at === 'display')).toEqual([]);
  expect(history.boat.needs.filter(({ at }) => at === next?.id).map(({ reading }) => reading)).toEqual([
    'heading',
    'position',
    'course-speed-ground',
    'time-date',
    'depth',
  ]);
  expect(history.done.at(-1)?.title).toBe('Helm display goes, 9-inch multifunction display comes to the same place.');
  expect(undo(history).boat).toEqual(boat);
});

test('both change places in the phase that is asked for, else in that of the old one', () => {
  const { boat } = aBoat().unit('display', { fate: 'stays', phase: 2 });
  const phasesOf = (asked?: number) => {
    const made = replaceUnit(boat, 'display', screen, asked);
    const after = applyEdits(startHistory(boat), made?.edits ?? []).boat;
    return ['display', made?.unit.id].map((unit) => after.kit.find(({ id }) => id === unit)?.phase);
  };
  expect(phasesOf()).toEqual([2, 2]);
  expect(phasesOf(3)).toEqual([3, 3]);
  expect(phasesOf(1)).toEqual([undefined, undefined]);
});

test('one that was only planned is left out rather than kept as one that goes', () => {
  const { boat } = aBoat();
  const made = replaceUnit(boat, 'display', screen);
  const after = applyEdits(startHistory(boat), made?.edits ?? []).boat;
  expect(after.kit.filter(({ place }) => place === 'helm').map(({ sheet, fate }) => [sheet, fate])).toEqual([
    ['fixed-radio', 'stays'],
    [screen.id, 'comes'],
  ]);
  expect(after.kit).toHaveLength(boat.kit.length);
});

test('the newcomer is to come into the hole of the old one, planned or aboard', () => {
  const hole = anOpening({ for: 'display' });
  for (const fate of ['stays', 'comes'] as const) {
    const { boat } = aBoat()
      .with({ openings: [hole] })
      .unit('display', { fate });
    const made = replaceUnit(boat, 'display', screen);
    const after = applyEdits(startHistory(boat), made?.edits ?? []).boat;
    expect(after.openings).toEqual([{ ...hole, for: made?.unit.id }]);
  }
});

test('what the newcomer does not understand is no longer wanted there', () => {
  const { boat } = aBoat().unit('display', { fate: 'stays' });
  const made = replaceUnit(boat, 'display', typical('radar-screen-old'));
  expect(made?.needs).toEqual([]);
  expect(replaceUnit(boat, 'nobody', screen)).toBeUndefined();
});

test('a copy has the needs of the first at its own place, and its own name', () => {
  const { boat } = aBoat();
  const made = copyUnit(boat, 'display', 'stern-rail');
  const after = applyEdits(startHistory(boat), made?.edits ?? []).boat;
  expect([made?.unit.id, made?.unit.name, made?.unit.place]).toEqual([
    'display-2',
    'Helm display, stern rail',
    'stern-rail',
  ]);
  expect(after.needs.filter(({ at }) => at === 'display-2').map(({ reading }) => reading)).toEqual([
    'heading',
    'position',
  ]);
  expect(copyUnit(boat, 'nobody', 'helm')).toBeUndefined();
});
