import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import type { Drawing, Shape } from '../papers/drawing/shapes.ts';
import { drawingPng } from './drawing-png.ts';

const sheet = (shapes: readonly Shape[]): Drawing => ({ widthMm: 25.4, heightMm: 50.8, shapes });
const word: Shape = { kind: 'text', xMm: 2, yMm: 20, text: 'trunk', sizeMm: 5, face: 'words', ink: 'ink' };

const sizeOf = (png: Uint8Array): number[] => {
  const view = new DataView(png.buffer, png.byteOffset);
  return [view.getUint32(16), view.getUint32(20)];
};
const hashOf = (png: Uint8Array): string => createHash('sha256').update(png).digest('hex');

test('a drawing of one by two inches is a picture of 200 by 400 dots', async () => {
  const png = await drawingPng(sheet([word]));
  expect([...png.slice(0, 4)]).toEqual([0x89, 0x50, 0x4e, 0x47]);
  expect(sizeOf(png)).toEqual([200, 400]);
});

test('words are drawn in faces of their own, and equal drawings give equal bytes', async () => {
  const [empty, words, figures, again] = await Promise.all(
    [[], [word], [{ ...word, face: 'figures' as const }], [word]].map((shapes) => drawingPng(sheet(shapes))),
  );
  const hashes = [empty, words, figures].map((png) => hashOf(png ?? new Uint8Array()));
  expect(new Set(hashes).size).toBe(3);
  expect(hashOf(again ?? new Uint8Array())).toBe(hashes[1]);
});
