import type { Hole } from '../../boat/opening.ts';
import type { Sheet } from '../../boat/sheet.ts';
import type { MmShape } from '../../fits-shape.ts';

/** A hole as it was measured, or a box of a sheet, about its own middle. */
export const shapeOf = (of: Hole | NonNullable<Sheet['body']>): MmShape => ({
  shape: of.shape ?? 'rectangle',
  xMm: 0,
  yMm: 0,
  widthMm: of.widthMm,
  heightMm: of.heightMm,
  ...(of.cornerMm === undefined || of.cornerMm === 0 ? {} : { cornerMm: of.cornerMm }),
  ...('outlineMm' in of ? { outlineMm: of.outlineMm.map(([x, y]): [number, number] => [x, y]) } : {}),
});
