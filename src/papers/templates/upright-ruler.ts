import type { Shape } from '../drawing/shapes.ts';
import { flatRulerMm } from '../labels/flat-ruler.ts';
import { lineShapes } from '../pages/piece.ts';
import { typeStyles } from '../pages/type-styles.ts';

const stroke = { ink: 'ink', widthMm: 0.15 } as const;

const tickMm = (at: number): number => (at % 50 === 0 ? 3 : at % 10 === 0 ? 2.2 : 1.2);

/** A ruler of 100 mm that stands in a margin: a print is checked upwards with another laid on it. */
export const uprightRuler = ({ leftMm, topMm }: { leftMm: number; topMm: number }): Shape[] => {
  const x = leftMm.toFixed(2);
  const ticks = Array.from({ length: flatRulerMm.lengthMm / 5 + 1 }, (_, at) => 5 * at)
    .map((at) => `M${x} ${(topMm + at).toFixed(2)}h${tickMm(at)}`)
    .join('');
  return [
    { kind: 'path', d: `M${x} ${topMm.toFixed(2)}v${flatRulerMm.lengthMm}${ticks}`, stroke },
    ...lineShapes(['100', 'mm'], typeStyles.foot, { leftMm, topMm: topMm + flatRulerMm.lengthMm + 1 }),
  ];
};
