import { useMemo } from 'react';
import type { Drawing, PathShape, Shape } from '../../../papers/drawing/shapes.ts';
import type { SheetSize } from '../../drawing/view-frame.ts';
import type { PlanAnswer } from '../../workers/protocol.ts';
import { keptChoice } from '../kept-choice.ts';
import { usePart } from '../use-part.ts';
import { unitsChoice } from '../words/units.ts';

/** What the sheet shows at the power step. */
export const powerSheetChoice = keptChoice('fairlead-power-sheet', ['boat', 'one line']);

// brought once the page stands: no part of the way to the first picture
const bringOneLine = () => import('../../../papers/power/one-line.ts');

/** The power drawing, and the few lines by which it is known when it is drawn very small. */
export interface PowerDrawing {
  readonly drawing: Drawing;
  readonly overview: readonly PathShape[];
}

/** Bars and feeders are thicker than what hangs on them. */
const thickMm = 0.6;

const barsOf = (shapes: readonly Shape[]): PathShape[] =>
  shapes.flatMap((shape) => {
    if (shape.kind === 'group') return barsOf(shape.shapes);
    return shape.kind === 'path' && (shape.stroke?.widthMm ?? 0) >= thickMm ? [shape] : [];
  });

/** The power of the boat on one line, as wide as the sheet; undefined while it is not asked for. */
export const usePowerDrawing = (
  { boat, plan }: PlanAnswer,
  { size, isAsked }: { readonly size: SheetSize | undefined; readonly isAsked: boolean },
): PowerDrawing | undefined => {
  const part = usePart(bringOneLine);
  const units = unitsChoice.use() === 'feet' ? 'feet' : 'metres';
  return useMemo(() => {
    if (!isAsked || size === undefined) return undefined;
    const drawing = part?.oneLine({ boat, plan, widthMm: size.widthMm, units })[0];
    return drawing === undefined ? undefined : { drawing, overview: barsOf(drawing.shapes) };
  }, [boat, plan, size, isAsked, units, part]);
};
