import type { Point } from '../drawing/point.ts';
import type { TextShape } from '../drawing/shapes.ts';

/** 11 px on screen. */
export const polarTextMm = 3;

/** A word of the picture. */
export const polarText = (words: string, [xMm, yMm]: Point, more: Partial<TextShape> = {}): TextShape => ({
  kind: 'text',
  text: words,
  xMm,
  yMm,
  sizeMm: polarTextMm,
  face: 'words',
  ink: 'ink',
  ...more,
});
