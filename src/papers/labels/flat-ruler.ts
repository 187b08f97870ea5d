import type { Shape } from '../drawing/shapes.ts';
import { lineShapes } from '../pages/piece.ts';
import { typeStyles } from '../pages/type-styles.ts';

/** How much of a page it takes. */
export const flatRulerMm = { lengthMm: 100, heightMm: 3.4 } as const;

const stroke = { ink: 'ink', widthMm: 0.15 } as const;

const tickMm = (at: number): number => (at % 50 === 0 ? 3 : at % 10 === 0 ? 2.2 : 1.2);

/** A ruler of 100 mm that lies in a margin: a print is checked with another laid on it. */
export const flatRuler = ({ leftMm, topMm }: { leftMm: number; topMm: number }): Shape[] => {
  const y = topMm.toFixed(2);
  const ticks = Array.from({ length: flatRulerMm.lengthMm / 5 + 1 }, (_, at) => 5 * at)
    .map((at) => `M${(leftMm + at).toFixed(2)} ${y}v${tickMm(at)}`)
    .join('');
  return [
    { kind: 'path', d: `M${leftMm.toFixed(2)} ${y}h${flatRulerMm.lengthMm}${ticks}`, stroke },
    ...lineShapes(['100 mm'], typeStyles.foot, { leftMm: leftMm + flatRulerMm.lengthMm + 1.5, topMm: topMm + 0.2 }),
  ];
};
