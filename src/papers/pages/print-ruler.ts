import type { Shape } from '../drawing/shapes.ts';
import { lineShapes } from './piece.ts';
import { typeStyles } from './type-styles.ts';

/** What a ruler laid on the paper must read. */
export const rulerMm = 100;

const tickMm = (at: number): number => (at % 50 === 0 ? 4 : at % 10 === 0 ? 3 : at % 5 === 0 ? 2.2 : 1.4);

const stroke = { ink: 'ink', widthMm: 0.15 } as const;

const marks = Array.from({ length: rulerMm + 1 }, (_, at) => at);

/** A ruler of 100 mm to the right and one downwards from a corner: a print is checked both ways. */
export const printRuler = ({ leftMm, topMm }: { leftMm: number; topMm: number }): Shape[] => {
  const [x, y] = [leftMm.toFixed(2), topMm.toFixed(2)];
  const along = marks.map((at) => `M${(leftMm + at).toFixed(2)} ${y}v${tickMm(at)}`).join('');
  const down = marks.map((at) => `M${x} ${(topMm + at).toFixed(2)}h${tickMm(at)}`).join('');
  return [
    { kind: 'path', d: `M${x} ${y}h${rulerMm}`, stroke },
    { kind: 'path', d: `M${x} ${y}v${rulerMm}`, stroke },
    { kind: 'path', d: along, stroke },
    { kind: 'path', d: down, stroke },
    ...lineShapes(['0'], typeStyles.foot, { leftMm: leftMm + 4.6, topMm: topMm + 4.2 }),
    ...lineShapes(['100 mm'], typeStyles.foot, { leftMm, topMm: topMm + 4.2, rightMm: leftMm + rulerMm }),
    ...lineShapes(['100 mm'], typeStyles.foot, { leftMm: leftMm + 4.6, topMm: topMm + rulerMm - 3 }),
  ];
};
