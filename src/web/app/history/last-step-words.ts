import { planChangeWords } from '../../../papers/lists/plan-change-words.ts';
import type { PlanState } from '../../workers/protocol.ts';
import { noticeWords } from './notice-words.ts';

const before = { done: '', undone: 'Taken back: ', redone: 'Made again: ' } as const;

/** What was done last and what it changed, in a sentence or two; undefined while nothing was. */
export const lastStepWords = ({ answer, busy, editRefusal }: PlanState): string | undefined => {
  if (editRefusal !== undefined) return `Not done. ${editRefusal.says} ${editRefusal.whatToDo}`;
  const last = answer?.edits.last;
  if (answer === undefined) return undefined;
  if (last === undefined) return noticeWords(answer.edits);
  if (last.kind === 'nothing') return 'Nothing to change: it is so already.';
  const did = `${before[last.kind]}${last.title}`;
  if (!answer.settled) return busy ? `${did} Planning anew.` : did;
  if (last.change === undefined) return did;
  const together =
    last.steps > 1 ? `With the ${last.steps - 1 === 1 ? 'step' : `${last.steps - 1} steps`} before: ` : '';
  return `${did} ${together}${planChangeWords(last.change, answer.boat)}`;
};
