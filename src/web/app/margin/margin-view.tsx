import { type ReactNode, type Ref, useState } from 'react';
import type { Failure } from '../../../core/blackouts-shape.ts';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import type { SearchWords } from '../../../papers/lists/search-words.ts';
import type { JobStep } from '../../../papers/next/job-steps.ts';
import type { LightStore } from '../../drawing/light-store.ts';
import type { CardChoice } from '../cards/card-choice.ts';
import { HintSlot } from '../hints/hint-slot.tsx';
import type { Step } from '../steps/step.ts';
import { usePart } from '../use-part.ts';
import type { Note } from './notes.ts';
import { words } from './words.ts';

const bringNotes = () => import('./notes-of-step.tsx');

interface MarginViewProps {
  readonly boat: Boat;
  readonly plan: Plan;
  /** the step one is at, once it has come */
  readonly step: Step | undefined;
  /** its name */
  readonly at: JobStep;
  readonly notes: readonly Note[];
  readonly titles: ReadonlyMap<string, string>;
  /** the card of what was picked, if any */
  readonly card: ReactNode;
  readonly lights: LightStore;
  readonly onShow: (ids: readonly string[], card?: CardChoice) => void;
  /** pulls something out, to see what goes dark */
  readonly onPull: (failure: Failure) => void;
  /** false while a quick plan stands in for the whole one: the notes are not the last word */
  readonly isSettled: boolean;
  readonly progress: SearchWords | undefined;
  readonly onStop: () => void;
  readonly ref?: Ref<HTMLElement>;
}

const Progress = ({ progress, onStop }: { progress: SearchWords | undefined; onStop: () => void }): ReactNode => (
  <div className="progress" role="status">
    {progress === undefined ? null : (
      <>
        {progress.says} {progress.found === undefined ? null : <span aria-live="off">{progress.found} </span>}
        <button type="button" onClick={onStop}>
          {words.stop}
        </button>
      </>
    )}
  </div>
);

/** The right margin: what there is to say about the boat, then the figures of the step one is at. */
export const MarginView = ({
  boat,
  plan,
  step,
  at,
  notes,
  titles,
  card,
  lights,
  onShow,
  onPull,
  isSettled,
  progress,
  onStop,
  ref,
}: MarginViewProps): ReactNode => {
  // first of all what stands above and the notes come together, so that neither pushes the other down
  const part = usePart(bringNotes);
  const [isReady, setIsReady] = useState(false);
  if (!isReady && part !== undefined && step !== undefined && titles.size > 0) setIsReady(true);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it
    <aside className="margin" ref={ref} aria-label={words.notes} aria-busy={!isSettled} tabIndex={0}>
      <h2 className="unseen">{words.notes}</h2>
      <Progress progress={progress} onStop={onStop} />
      {isReady ? <HintSlot place="margin" step={at} /> : null}
      {step?.Above === undefined ? null : (
        <step.Above boat={boat} plan={plan} hand={{ lights, onShow }} onPull={onPull} />
      )}
      {card}
      {step?.Begin === undefined ? null : (
        <step.Begin boat={boat} plan={plan} hand={{ lights, onShow }} onPull={onPull} />
      )}
      {isReady && part !== undefined ? (
        <part.NotesOfStep {...{ boat, plan, notes, titles, at, lights, onShow }}>
          {step === undefined ? null : (
            <step.Margin boat={boat} plan={plan} hand={{ lights, onShow }} onPull={onPull} />
          )}
        </part.NotesOfStep>
      ) : (
        <p className="calm">{words.checking}</p>
      )}
    </aside>
  );
};
