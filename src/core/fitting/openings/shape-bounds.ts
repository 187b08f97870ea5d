import type { MmShape, Side } from '../../fits-shape.ts';

/** How far a shape reaches to each side, from where it is counted: to the left and down is below nothing. */
export const shapeBounds = ({ xMm, yMm, widthMm, heightMm }: MmShape): Readonly<Record<Side, number>> => ({
  left: xMm - widthMm / 2,
  right: xMm + widthMm / 2,
  above: yMm + heightMm / 2,
  below: yMm - heightMm / 2,
});
