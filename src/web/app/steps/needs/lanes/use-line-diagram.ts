import { useMemo } from 'react';
import type { SheetSize } from '../../../../drawing/view-frame.ts';
import type { PlanAnswer } from '../../../../workers/protocol.ts';
import { keptChoice } from '../../../kept-choice.ts';
import { type InPlace, thickLines } from '../../../sheet/in-place.ts';
import { words } from '../../../sheet/words.ts';
import { usePart } from '../../../use-part.ts';
import { unitsChoice } from '../../../words/units.ts';

/** What the sheet shows at the step of needs. */
export const needsSheetChoice = keptChoice('fairlead-needs-sheet', ['boat', 'lines of data']);

// brought once the page stands: no part of the way to the first picture
const bringDiagram = () => import('../../../../../papers/lanes/line-diagram.ts');

/** A trunk is thicker than what hangs on it. */
const trunkMm = 0.7;

/** The lines of data as lanes, as wide as the sheet; undefined while they are not asked for. */
export const useLineDiagram = (
  { boat, plan }: PlanAnswer,
  { size, isAsked }: { readonly size: SheetSize | undefined; readonly isAsked: boolean },
): InPlace | undefined => {
  const part = usePart(bringDiagram);
  const units = unitsChoice.use() === 'feet' ? 'feet' : 'metres';
  return useMemo(() => {
    if (!isAsked || size === undefined || part === undefined) return undefined;
    const drawing = part.lineDiagram({ boat, plan, widthMm: size.widthMm, units });
    const says = words.linesOf(boat.name);
    return { drawing, overview: thickLines(drawing.shapes, trunkMm), says, isOnPages: false };
  }, [boat, plan, size, isAsked, units, part]);
};
