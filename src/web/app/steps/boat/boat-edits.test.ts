import { expect, test } from 'vitest';
import { aBoat } from '../../../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import { applyEdits } from '../../../../core/boat/history.ts';
import { startHistory } from '../../../../core/boat/start-history.ts';
import { newPlace, newSplit, newWay } from './boat-edits.ts';
import { moveEdit, shiftIn } from './moved-places.ts';

const tern = aBoat().boat;
const after = (boat: Boat, ...edits: Parameters<typeof applyEdits>[1]): Boat =>
  applyEdits(startHistory(boat), edits).boat;

test('new places have names and ids of their own, and lie amidships where the view does not say', () => {
  const first = newPlace(tern, { xM: 3.333, zM: 1.2 });
  const boat = after(tern, first.edit);
  expect(boat.places.at(-1)).toMatchObject({ id: first.id, name: 'new place', xM: 3.33, yM: 0, zM: 1.2 });
  const second = newPlace(boat, {});
  expect(after(boat, second.edit).places.at(-1)).toMatchObject({ name: 'new place 2', xM: 4.2, yM: 0 });
  expect(second.id).not.toBe(first.id);
});

test('a way is drawn between two places, and split where it was pressed', () => {
  const way = newWay(tern, ['battery-box', 'mast-base']);
  const boat = after(tern, way.edit);
  const drawn = boat.ways.find(({ id }) => id === way.id);
  expect(drawn?.ends).toEqual(['battery-box', 'mast-base']);
  if (drawn === undefined) return;
  const split = newSplit(boat, drawn, 0.25);
  if (split === undefined) throw new Error('not split');
  const halves = after(boat, split.edit);
  expect(halves.places.find(({ id }) => id === split.id)).toMatchObject({
    name: 'between battery box and mast base',
    xM: 3,
    yM: -0.37,
    zM: 0.28,
  });
  expect(halves.ways).toHaveLength(boat.ways.length + 1);
});

test('a move names only what changes, and takes all that are picked along', () => {
  const ids = new Set(['helm', 'locker']);
  const moved = moveEdit(tern, ids, shiftIn('top', { alongM: 0.5, acrossM: 0 }));
  expect(moved).toEqual({
    edit: 'move-places',
    params: {
      places: [
        { place: 'helm', xM: 5.5 },
        { place: 'locker', xM: 4.5 },
      ],
    },
  });
});
