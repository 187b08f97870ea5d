import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Box, contains, insideMm, overlaps } from '../drawing/box.ts';
import type { Room } from '../sheet/label-room.ts';
import { type Note, placeNotes } from './place-notes.ts';

const within: Box = { leftMm: 0, topMm: 0, rightMm: 200, bottomMm: 120 };
const empty: Room = { within, taken: [], runs: [], soft: [], points: [] };
const noteAt = (id: string, xMm: number, yMm: number): Note => ({
  id,
  anchors: [[xMm, yMm]],
  forms: [{ widthMm: 20, heightMm: 6, costMm: 0 }],
});

test('a note with room around it stands at its anchor and needs no leader', () => {
  const { placed, strain, lost } = placeNotes([noteAt('P1', 100, 60)], empty);
  expect(placed).toHaveLength(1);
  expect(placed[0]?.leader).toBeUndefined();
  expect([strain, lost]).toEqual([0, []]);
});

test('notes touch neither each other nor what is taken nor a line, and stay in their room', () => {
  const spot = fc.record({ xMm: fc.integer({ min: 10, max: 190 }), yMm: fc.integer({ min: 10, max: 110 }) });
  fc.assert(
    fc.property(
      fc.uniqueArray(spot, { minLength: 1, maxLength: 14, selector: ({ xMm, yMm }) => `${xMm} ${yMm}` }),
      (spots) => {
        const taken: Box = { leftMm: 90, topMm: 50, rightMm: 110, bottomMm: 60 };
        const run = { from: [0, 30], to: [200, 90], halfMm: 1 } as const;
        const notes = spots.map(({ xMm, yMm }, at) => noteAt(`P${at}`, xMm, yMm));
        const room = { ...empty, taken: [taken], runs: [run] };
        const { placed, strain, lost } = placeNotes(notes, room);
        expect(placed.length + lost.length).toBe(notes.length);
        for (const [at, { box }] of placed.entries()) {
          expect(contains(within, box)).toBe(true);
          expect(overlaps(box, taken)).toBe(false);
          for (const other of placed.slice(at + 1)) expect(overlaps(box, other.box)).toBe(false);
          if (strain === 0) expect(insideMm(box, run.from, run.to)).toBe(0);
        }
      },
    ),
    { numRuns: 40 },
  );
});

test('a note that has nowhere to stand is said to be lost', () => {
  const tight: Room = { ...empty, within: { leftMm: 0, topMm: 0, rightMm: 15, bottomMm: 15 } };
  expect(placeNotes([noteAt('P1', 7, 7)], tight).lost).toEqual(['P1']);
});
