import { planChangeWords } from '../../../papers/lists/plan-change-words.ts';
import type { PlanState } from '../../workers/protocol.ts';
import { noticeWords } from './notice-words.ts';
import { words } from './words.ts';

/** What was done last and what it changed, in a sentence or two; undefined while nothing was. */
export const lastStepWords = ({ answer, busy, editRefusal }: PlanState): string | undefined => {
  if (editRefusal !== undefined) return words.notDone(`${editRefusal.says} ${editRefusal.whatToDo}`);
  const last = answer?.edits.last;
  if (answer === undefined) return undefined;
  if (last === undefined) return noticeWords(answer.edits);
  if (last.kind === 'nothing') return words.isSoAlready;
  const did = `${words.before[last.kind]}${last.title}`;
  if (!answer.settled) return busy ? words.planningAnew(did) : did;
  if (last.change === undefined) return did;
  const together = last.steps > 1 ? words.withStepsBefore(last.steps - 1) : '';
  return `${did} ${together}${planChangeWords(last.change, answer.boat)}`;
};
