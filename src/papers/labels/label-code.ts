import { generate } from 'lean-qr';
import { remember } from '../../core/boat/remember.ts';

/** A code of squares: how many along a side, and which are dark. */
export interface LabelCode {
  readonly squares: number;
  readonly isDark: (x: number, y: number) => boolean;
}

/**
 * A text as a QR code (ISO/IEC 18004), in the smallest size it fits and with the most correction that size has room for.
 *
 * @example labelCode('C07').squares // 21
 */
export const labelCode = remember({
  // the labels of a large boat, which are set anew for every paper and at every change of the binder
  most: 2000,
  keyOf: (text: string) => text,
  find: (text): LabelCode => {
    const made = generate(text);
    return { squares: made.size, isDark: (x, y) => made.get(x, y) };
  },
});

/** A code as one path: each run of dark squares in a row is one rectangle. */
export const codePath = (
  { squares, isDark }: LabelCode,
  { leftMm, topMm, squareMm }: { leftMm: number; topMm: number; squareMm: number },
): string => {
  const parts: string[] = [];
  for (let y = 0; y < squares; y += 1) {
    for (let x = 0; x < squares; x += 1) {
      if (!isDark(x, y) || (x > 0 && isDark(x - 1, y))) continue;
      let end = x + 1;
      while (end < squares && isDark(end, y)) end += 1;
      const [left, top] = [leftMm + x * squareMm, topMm + y * squareMm];
      const widthMm = (end - x) * squareMm;
      parts.push(
        `M${left.toFixed(3)} ${top.toFixed(3)}h${widthMm.toFixed(3)}v${squareMm.toFixed(3)}h${(-widthMm).toFixed(3)}Z`,
      );
    }
  }
  return parts.join('');
};
