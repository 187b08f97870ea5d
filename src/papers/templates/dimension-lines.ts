import { pathShape } from '../drawing/marks.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { inchText, mmText } from './size-words.ts';

const hair = { ink: 'ink', widthMm: 0.13 } as const;
const tickMm = 1.1;
const figures = { sizeMm: 2.7, face: 'words' } as const;

/** One stretch of a chain of dimensions: where it begins and ends on the drawing, and how long it is in truth. */
interface Stretch {
  readonly fromMm: number;
  readonly toMm: number;
  readonly trueMm: number;
}

const text = (says: string, xMm: number, yMm: number, anchor: 'middle' | 'end'): Shape => ({
  kind: 'text',
  xMm,
  yMm,
  text: says,
  ...figures,
  anchor,
  ink: 'ink',
});

const tick = (xMm: number, yMm: number): Shape =>
  pathShape(
    polyline([
      [xMm - tickMm, yMm + tickMm],
      [xMm + tickMm, yMm - tickMm],
    ]),
    { stroke: hair },
  );

/** Both units where they have room, millimetres alone where only they have, nothing where nothing has. */
const saysOf = ({ fromMm, toMm, trueMm }: Stretch): string | undefined => {
  const room = Math.abs(toMm - fromMm) - 1.5;
  const both = `${mmText(trueMm)} (${inchText(trueMm)} in)`;
  return [both, mmText(trueMm)].find((says) => textWidthMm(says, figures) <= room);
};

const stretches = (trueMm: readonly number[], on: (mm: number) => number): Stretch[] =>
  trueMm.slice(1).flatMap((to, at) => {
    const from = trueMm[at] ?? to;
    return Math.abs(to - from) < 0.05 ? [] : [{ fromMm: on(from), toMm: on(to), trueMm: Math.abs(to - from) }];
  });

/** A chain of dimensions along the drawing, at one height; `fromYMm` is where its thin lines begin. */
export const acrossChain = (
  trueMm: readonly number[],
  on: (mm: number) => number,
  { atYMm, fromYMm }: { readonly atYMm: number; readonly fromYMm: number },
): Shape[] => [
  ...trueMm.flatMap((mm): Shape[] => [
    pathShape(
      polyline([
        [on(mm), fromYMm],
        [on(mm), atYMm + tickMm],
      ]),
      { stroke: hair },
    ),
    tick(on(mm), atYMm),
  ]),
  pathShape(
    polyline([
      [on(trueMm[0] ?? 0), atYMm],
      [on(trueMm.at(-1) ?? 0), atYMm],
    ]),
    { stroke: hair },
  ),
  ...stretches(trueMm, on).flatMap((stretch) => {
    const says = saysOf(stretch);
    return says === undefined ? [] : [text(says, (stretch.fromMm + stretch.toMm) / 2, atYMm - 0.9, 'middle')];
  }),
];

/** A chain of dimensions up the drawing, at one distance from its left; the words stand to the left of it. */
export const upChain = (
  trueMm: readonly number[],
  on: (mm: number) => number,
  { atXMm, fromXMm }: { readonly atXMm: number; readonly fromXMm: number },
): Shape[] => [
  ...trueMm.flatMap((mm): Shape[] => [
    pathShape(
      polyline([
        [fromXMm, on(mm)],
        [atXMm - tickMm, on(mm)],
      ]),
      { stroke: hair },
    ),
    tick(atXMm, on(mm)),
  ]),
  pathShape(
    polyline([
      [atXMm, on(trueMm[0] ?? 0)],
      [atXMm, on(trueMm.at(-1) ?? 0)],
    ]),
    { stroke: hair },
  ),
  ...stretches(trueMm, on).flatMap(({ fromMm, toMm, trueMm: length }) =>
    Math.abs(toMm - fromMm) < figures.sizeMm
      ? []
      : [text(`${mmText(length)} (${inchText(length)} in)`, atXMm - 1.6, (fromMm + toMm) / 2 + 0.9, 'end')],
  ),
];
