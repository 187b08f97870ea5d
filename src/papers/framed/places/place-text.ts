import type { Point } from '../../drawing/point.ts';
import type { Shape, TextShape } from '../../drawing/shapes.ts';
import { sheetText } from '../sheet-text.ts';

/** From one line of small text in a picture to the next. */
export const pictureLineMm = 3.1;

/** Where a picture stands on its sheet. */
export interface PictureRoom {
  readonly leftMm: number;
  readonly topMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A small text in a picture. */
export const pictureText = (words: string, [xMm, yMm]: Point, look: Partial<TextShape> = {}): TextShape => ({
  kind: 'text',
  xMm,
  yMm,
  text: words,
  ...sheetText.small,
  ink: 'ink',
  ...look,
});

/** Lines of small text under each other; a title stands out as the first. */
export const pictureLines = (
  lines: readonly string[],
  [leftMm, topMm]: Point,
  about: readonly string[],
  isTitled = true,
): Shape[] =>
  lines.map((line, at) =>
    pictureText(line, [leftMm, topMm + 2.3 + at * pictureLineMm], {
      about,
      ...(isTitled && at === 0 ? { weight: 'semibold' } : {}),
    }),
  );
