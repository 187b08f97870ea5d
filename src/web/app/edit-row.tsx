import type { ReactNode } from 'react';
import type { PlanAnswer, PlanState } from '../workers/protocol.ts';
import { EditLine } from './history/edit-line.tsx';
import type { BoatSaver } from './saving/boat-saver.ts';
import { saveBoatFile } from './saving/save-file.ts';
import { SaveLine } from './saving/save-line.tsx';
import type { useEarlierStates } from './saving/use-earlier-states.tsx';
import { type HeldBack, HeldBackLine, heldBackWords } from './tabs/held-back-line.tsx';

/** The row under the top bar: what was done last, and how the boat stands with her file. */
export const EditRow = ({
  state,
  answer,
  saver,
  held,
  isRefused,
  earlier,
  onStep,
  onReload,
  onTakeOver,
}: {
  state: PlanState;
  answer: PlanAnswer;
  saver: BoatSaver;
  /** why nothing can be changed in this tab; absent where all can */
  held: HeldBack | undefined;
  /** whether something was tried all the same */
  isRefused: boolean;
  earlier: ReturnType<typeof useEarlierStates>;
  onStep: (step: 'undo' | 'redo') => void;
  onReload: () => void;
  onTakeOver: () => void;
}): ReactNode => (
  <>
    <EditLine state={state} onStep={onStep} says={held !== undefined && isRefused ? heldBackWords(held) : undefined} />
    {held === undefined ? (
      <SaveLine key={answer.opened} saver={saver} answer={answer} onReload={onReload} onStates={earlier.onStates} />
    ) : (
      <HeldBackLine
        held={held}
        onTakeOver={onTakeOver}
        onBack={earlier.goBack}
        onRestore={earlier.restoreSeen}
        onCopy={() => saveBoatFile(answer.boat.name, answer.boatText)}
      />
    )}
  </>
);
