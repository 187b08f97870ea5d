import { type TextStyle, textWidthMm } from '../drawing/text-width.ts';

/** The size at which a line of words is no wider than its room: its own, or smaller. */
export const fittingSizeMm = (text: string, style: TextStyle, widthMm: number): number =>
  Math.min(style.sizeMm, (style.sizeMm * widthMm) / textWidthMm(text, style));
