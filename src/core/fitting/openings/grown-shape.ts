import type { MmShape } from '../../fits-shape.ts';

/** A rectangle or round shape that is larger by so much on every side, smaller where it is below nothing; at least a point. */
export const grownShape = (shape: MmShape, byMm: number): MmShape => {
  const widthMm = Math.max(0, shape.widthMm + 2 * byMm);
  const heightMm = Math.max(0, shape.heightMm + 2 * byMm);
  const cornerMm = shape.cornerMm === undefined ? undefined : Math.max(0, shape.cornerMm + byMm);
  const { cornerMm: _, ...bare } = shape;
  return {
    ...bare,
    widthMm,
    heightMm,
    ...(cornerMm === undefined || cornerMm === 0 ? {} : { cornerMm: Math.min(cornerMm, widthMm / 2, heightMm / 2) }),
  };
};
