import type { MmShape } from '../../core/fits-shape.ts';
import { inchM } from '../../core/units/foot.ts';

/** Millimetres to a tenth. */
export const mmText = (mm: number): string => String(Number(mm.toFixed(1)));

/** Inches to a hundredth. */
export const inchText = (mm: number): string => (mm / 1000 / inchM).toFixed(2);

/** A length in both units: "212 mm (8.35 in)". */
export const bothText = (mm: number): string => `${mmText(mm)} mm (${inchText(mm)} in)`;

/** A size in both units: "212 × 178 mm (8.35 × 7.01 in)"; a round one by its diameter. */
export const sizeText = ({ shape, widthMm, heightMm }: Pick<MmShape, 'shape' | 'widthMm' | 'heightMm'>): string =>
  shape === 'round'
    ? `${mmText(widthMm)} mm (${inchText(widthMm)} in) round`
    : `${mmText(widthMm)} × ${mmText(heightMm)} mm (${inchText(widthMm)} × ${inchText(heightMm)} in)`;
