import type { Point } from './point.ts';
import type { Shape, TextShape } from './shapes.ts';
import { textWidthMm } from './text-width.ts';

/** An upright box on the sheet, millimetres. */
export interface Box {
  readonly leftMm: number;
  readonly topMm: number;
  readonly rightMm: number;
  readonly bottomMm: number;
}

/** Share of the type size that letters reach above and below the line they stand on. */
const rise = { above: 0.74, below: 0.22 };

/** The box a text takes on the sheet. */
export const textBox = (shape: TextShape): Box => {
  const widthMm = textWidthMm(shape.text, shape);
  const share = shape.anchor === 'middle' ? 0.5 : shape.anchor === 'end' ? 1 : 0;
  const leftMm = shape.xMm - widthMm * share;
  return {
    leftMm,
    topMm: shape.yMm - shape.sizeMm * rise.above,
    rightMm: leftMm + widthMm,
    bottomMm: shape.yMm + shape.sizeMm * rise.below,
  };
};

export const overlaps = (one: Box, other: Box): boolean =>
  one.leftMm < other.rightMm && other.leftMm < one.rightMm && one.topMm < other.bottomMm && other.topMm < one.bottomMm;

export const contains = (outer: Box, inner: Box): boolean =>
  outer.leftMm <= inner.leftMm &&
  outer.topMm <= inner.topMm &&
  outer.rightMm >= inner.rightMm &&
  outer.bottomMm >= inner.bottomMm;

export const grown = (box: Box, byMm: number): Box => ({
  leftMm: box.leftMm - byMm,
  topMm: box.topMm - byMm,
  rightMm: box.rightMm + byMm,
  bottomMm: box.bottomMm + byMm,
});

/** How much of the segment a-b, in millimetres, runs inside the box (Liang-Barsky clipping). */
export const insideMm = (box: Box, a: Point, b: Point): number => {
  // most lines lie far off: say so before any division
  if (a[0] < box.leftMm && b[0] < box.leftMm) return 0;
  if (a[0] > box.rightMm && b[0] > box.rightMm) return 0;
  if (a[1] < box.topMm && b[1] < box.topMm) return 0;
  if (a[1] > box.bottomMm && b[1] > box.bottomMm) return 0;
  const [alongMm, downMm] = [b[0] - a[0], b[1] - a[1]];
  let enters = 0;
  let leaves = 1;
  if (alongMm !== 0) {
    const [left, right] = [(box.leftMm - a[0]) / alongMm, (box.rightMm - a[0]) / alongMm];
    enters = Math.max(enters, Math.min(left, right));
    leaves = Math.min(leaves, Math.max(left, right));
  }
  if (downMm !== 0) {
    const [top, bottom] = [(box.topMm - a[1]) / downMm, (box.bottomMm - a[1]) / downMm];
    enters = Math.max(enters, Math.min(top, bottom));
    leaves = Math.min(leaves, Math.max(top, bottom));
  }
  return enters < leaves ? (leaves - enters) * Math.hypot(alongMm, downMm) : 0;
};

/** Every text of a drawing, groups opened. */
export const textsOf = (shapes: readonly Shape[]): TextShape[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? textsOf(shape.shapes) : shape.kind === 'text' ? [shape] : []));
