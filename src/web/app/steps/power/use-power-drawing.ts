import { useMemo } from 'react';
import type { SheetSize } from '../../../drawing/view-frame.ts';
import type { PlanAnswer } from '../../../workers/protocol.ts';
import { keptChoice } from '../../kept-choice.ts';
import { type InPlace, thickLines } from '../../sheet/in-place.ts';
import { words } from '../../sheet/words.ts';
import { usePart } from '../../use-part.ts';
import { unitsChoice } from '../../words/units.ts';

/** What the sheet shows at the power step. */
export const powerSheetChoice = keptChoice('fairlead-power-sheet', ['boat', 'one line']);

// brought once the page stands: no part of the way to the first picture
const bringOneLine = () => import('../../../../papers/power/one-line.ts');

/** Bars and feeders are thicker than what hangs on them. */
const thickMm = 0.6;

/** The power of the boat on one line, as wide as the sheet; undefined while it is not asked for. */
export const usePowerDrawing = (
  { boat, plan }: PlanAnswer,
  { size, isAsked }: { readonly size: SheetSize | undefined; readonly isAsked: boolean },
): InPlace | undefined => {
  const part = usePart(bringOneLine);
  const chosen = unitsChoice.use();
  const units = chosen === 'both' ? undefined : chosen;
  return useMemo(() => {
    if (!isAsked || size === undefined) return undefined;
    const drawing = part?.oneLine({ boat, plan, widthMm: size.widthMm, units })[0];
    if (drawing === undefined) return undefined;
    const says = words.powerOf(boat.name);
    return { drawing, overview: thickLines(drawing.shapes, thickMm), says, isOnPages: true };
  }, [boat, plan, size, isAsked, units, part]);
};
