import type { ReactNode } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { daySheet } from '../../../../papers/work/day-sheet.ts';
import { useIsPrinting } from '../../use-is-printing.ts';
import { dayChosen } from './day-choice.ts';
import { DayPaper } from './day-paper.tsx';
import { useWork } from './use-work.ts';
import { useWorkView } from './work-view.ts';

/** The sheet of the day that is chosen, made only for paper. */
export const DayPages = ({ boat, plan }: { boat: Boat; plan: Plan }): ReactNode => {
  const { input, log, append } = useWork(boat, plan);
  const isPrinting = useIsPrinting();
  const view = useWorkView();
  const at = input === undefined ? undefined : dayChosen(input, view.at);
  const phase = input?.phases.find((own) => own.phase === at?.phase);
  if (!isPrinting || input === undefined || at === undefined || phase === undefined) return null;
  return (
    <div className="day-pages">
      <DayPaper sheet={daySheet(input, phase, at.day)} boatName={boat.name} log={log} append={append} />
    </div>
  );
};
