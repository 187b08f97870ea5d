import { useMemo } from 'react';
import { type BoatSheet, boatSheet } from '../../../papers/sheet/boat-sheet.ts';
import { curveKinds } from '../../../papers/sheet/curve-kinds.ts';
import type { SheetSize } from '../../drawing/view-frame.ts';
import type { PlanAnswer } from '../../workers/protocol.ts';
import { keptChoice } from '../kept-choice.ts';
import { balloonNumbers, type Note, notesOf } from '../margin/notes.ts';
import type { StepId } from '../route.ts';
import { unitsChoice } from '../words/units.ts';
import { type UnitRow, unitRows } from './unit-rows.ts';

/** What the curve under the strip tells. */
export const curveChoice = keptChoice('fairlead-curve', curveKinds);

/** Everything one sees of a boat, made from its plan: the sheet, the notes in its margin, the list in its place. */
export interface BoatView {
  /** absent until the window the sheet lies in is laid out */
  readonly drawn: BoatSheet | undefined;
  readonly notes: readonly Note[];
  readonly rows: readonly UnitRow[];
}

/** Makes the view anew when the plan, the size of the sheet or what it is about changes, and only then. */
export const useBoatView = ({ boat, plan }: PlanAnswer, size: SheetSize | undefined, step: StepId): BoatView => {
  const about = step === 'power' ? 'power' : 'lines';
  const curve = curveChoice.use();
  const units = unitsChoice.use() === 'feet' ? 'feet' : 'metres';
  const drawn = useMemo(
    () => (size === undefined ? undefined : boatSheet({ boat, plan, ...size, step: about, curve, units })),
    [boat, plan, size, about, curve, units],
  );
  return useMemo(() => {
    const numbers = balloonNumbers(drawn?.balloons ?? []);
    const notes = notesOf(plan, numbers);
    return { drawn, notes, rows: unitRows({ boat, plan, notes, numbers }) };
  }, [boat, plan, drawn]);
};
