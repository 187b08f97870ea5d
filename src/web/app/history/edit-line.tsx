import type { ReactNode } from 'react';
import type { PlanState } from '../../workers/protocol.ts';
import { useWords } from '../words/units.ts';
import { lastStepWords } from './last-step-words.ts';

/** Which way the link of the line leads: back from what was done, or forth again from what was taken back. */
const linkOf = ({ answer, editRefusal }: PlanState): 'undo' | 'redo' | undefined => {
  const { last, undo, redo } = answer?.edits ?? {};
  if (last === undefined || editRefusal !== undefined || last.kind === 'nothing') return undefined;
  if (last.kind === 'undone') return redo === undefined ? undefined : 'redo';
  return undo === undefined ? undefined : 'undo';
};

/** The quiet line under the top bar: what the last step did and what it changed, with the way back. */
export const EditLine = ({
  state,
  onStep,
  says,
}: {
  state: PlanState;
  /** said in place of what was done last */
  says?: string | undefined;
  onStep: (step: 'undo' | 'redo') => void;
}): ReactNode => {
  const link = linkOf(state);
  const words = useWords();
  return (
    <div className="edit-line">
      <p className="edit-says" role="status" aria-live="polite">
        {words(says ?? lastStepWords(state) ?? '')}
      </p>
      {link === undefined ? null : (
        <button type="button" className="edit-link" onClick={() => onStep(link)}>
          {link}
        </button>
      )}
    </div>
  );
};
