import { expect, test } from 'vitest';
import { aBoat } from './a-boat.test-helper.ts';
import { anOpening } from './an-opening.test-helper.ts';
import { edits } from './edits/index.ts';
import { aFullBoat } from './full-boat.test-helper.ts';
import { openingSchema } from './opening.ts';
import { readBoat } from './read-boat.ts';
import { UserError } from './user-error.ts';
import { writeBoat } from './write-boat.ts';

const hole = anOpening();
const tern = aBoat().boat;

const refused = (own: object): string | undefined => {
  try {
    edits['set-opening'].apply(tern, { ...hole, ...own });
    return undefined;
  } catch (error) {
    if (error instanceof UserError) return `${error.place}: ${error.says}`;
    throw error;
  }
};

test('an opening is set, set anew, and taken out with its photos', () => {
  const once = edits['set-opening'].apply(tern, hole);
  expect(once.openings).toEqual([hole]);
  const wider = { ...hole, hole: { ...hole.hole, widthMm: 210 } };
  const photo = {
    of: 'hole',
    shows: 'back',
    picture: { hash: 'ab'.repeat(32), type: 'jpeg', widthPx: 9, heightPx: 9 },
  };
  const twice = edits['add-photo'].apply(edits['set-opening'].apply(once, wider), photo);
  expect(twice.openings).toEqual([wider]);
  expect(edits['remove-opening'].title({ opening: 'hole' }, twice)).toContain('hole of the old plotter');
  expect(edits['remove-opening'].apply(twice, { opening: 'hole' })).toEqual(tern);
});

test('a unit that leaves leaves its hole; a place with a hole in it stays', () => {
  const boat = edits['set-opening'].apply(tern, { ...hole, for: 'radio' });
  expect(edits['remove-unit'].apply(boat, { unit: 'radio' }).openings).toEqual([hole]);
  const { kit, places } = tern;
  const bare = places.find(({ id }) => !kit.some(({ place }) => place === id))?.id ?? '';
  const moved = edits['set-opening'].apply(tern, { ...hole, place: bare });
  expect(() => edits['remove-place'].apply(moved, { place: bare })).toThrow('hole of the old plotter');
});

test.each([
  [{ hole: { shape: 'round', widthMm: 90, heightMm: 80 } }, 'set-opening.hole.heightMm: A round hole'],
  [{ hole: { shape: 'traced', widthMm: 90, heightMm: 80 } }, 'set-opening.hole.outlineMm: A traced hole'],
  [{ hole: { shape: 'rectangle', widthMm: 90, heightMm: 80, cornerMm: 41 } }, 'set-opening.hole.cornerMm: The corners'],
  [{ plate: { id: 'hole', thickness: 4 } }, 'set-opening.plate.thickness: `thickness` is not'],
  [{ place: 'hlem' }, 'There is no place'],
])('%j is refused with the place and a sentence', (own, says) => {
  expect(refused(own)).toContain(says);
});

test('a traced outline lies about the middle of its hole', () => {
  const outline = (by: number) => [
    [-40 + by, -25],
    [40 + by, -25],
    [by, 25],
  ];
  const traced = (by: number) => ({
    ...hole,
    hole: { shape: 'traced', widthMm: 80, heightMm: 50, outlineMm: outline(by) },
  });
  expect(openingSchema.safeParse(traced(0.4)).success).toBe(true);
  expect(openingSchema.safeParse(traced(0.6)).success).toBe(false);
});

test('openings come back from the file as they were', () => {
  const full = aFullBoat();
  expect(full.openings?.length).toBe(2);
  expect(writeBoat(readBoat(writeBoat(full)))).toBe(writeBoat(full));
});
