import type { MmShape } from '../../fits-shape.ts';
import { pathArea } from './path-area.ts';

/** The area of a shape, mm², with its corners and arcs as they are. */
export const shapeAreaMm2 = ({ shape, widthMm, heightMm, cornerMm = 0, outlineMm = [] }: MmShape): number => {
  if (shape === 'round') return (Math.PI * widthMm ** 2) / 4;
  if (shape === 'traced') return Math.abs(pathArea(outlineMm));
  return widthMm * heightMm - (4 - Math.PI) * cornerMm ** 2;
};
