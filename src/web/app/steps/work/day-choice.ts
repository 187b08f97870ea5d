import type { PictureInput } from '../../../../papers/work/picture-input.ts';
import { workingDays } from '../../../../papers/work/working-days.ts';
import type { DayAt } from './work-view.ts';

/** Every day with something to do, phase by phase. */
export const daysToChoose = ({ phases }: Pick<PictureInput, 'phases'>): DayAt[] =>
  phases.flatMap((phase) => workingDays(phase).map((day) => ({ phase: phase.phase, day })));

/** The day that was chosen, if there still is work on it; else the first on which something is left to do. */
export const dayChosen = (input: Pick<PictureInput, 'phases' | 'done'>, at: DayAt | undefined): DayAt | undefined => {
  const days = daysToChoose(input);
  const chosen = days.find(({ phase, day }) => phase === at?.phase && day === at.day);
  const isOpen = ({ phase, day }: DayAt): boolean =>
    input.phases
      .find((own) => own.phase === phase)
      ?.order?.starts.some((start) => start.day <= day && day <= start.lastDay && !input.done.has(start.job)) === true;
  return chosen ?? days.find(isOpen) ?? days.at(-1);
};
