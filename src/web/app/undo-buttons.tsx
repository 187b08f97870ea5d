import type { ReactNode } from 'react';
import type { EditState } from '../workers/protocol.ts';

const StepButton = ({
  step,
  title,
  onStep,
}: {
  step: 'undo' | 'redo';
  title: string | undefined;
  onStep: (step: 'undo' | 'redo') => void;
}): ReactNode => (
  // not `disabled`: the button would drop the keyboard when the last step goes
  <button
    type="button"
    className="step-button"
    aria-disabled={title === undefined}
    aria-label={title === undefined ? `${step}: nothing to ${step}` : `${step}: ${title}`}
    title={title}
    onClick={() => {
      if (title !== undefined) onStep(step);
    }}
  >
    {step}
  </button>
);

/** Takes the last step back or makes it again; each button's name says which step that is. */
export const UndoButtons = ({
  edits,
  onStep,
}: {
  edits: EditState;
  onStep: (step: 'undo' | 'redo') => void;
}): ReactNode => (
  <>
    <StepButton step="undo" title={edits.undo} onStep={onStep} />
    <StepButton step="redo" title={edits.redo} onStep={onStep} />
  </>
);
