import { type ReactNode, type Ref, useMemo, useState } from 'react';
import { isOpen } from '../../../core/accepted-findings.ts';
import type { Failure } from '../../../core/blackouts-shape.ts';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { currencyOf } from '../../../papers/lists/cure-words.ts';
import type { SearchWords } from '../../../papers/lists/search-words.ts';
import type { JobStep } from '../../../papers/next/job-steps.ts';
import type { LightStore } from '../../drawing/light-store.ts';
import type { CardChoice } from '../cards/card-choice.ts';
import { words as courseWords } from '../course/words.ts';
import { HintSlot } from '../hints/hint-slot.tsx';
import { putHintAway } from '../hints/hint-store.ts';
import type { Step } from '../steps/step.ts';
import { usePart } from '../use-part.ts';
import { AllWords } from '../words/all-words.tsx';
import { NoteView } from './note-view.tsx';
import type { Note } from './notes.ts';
import { notesByStep } from './notes-by-step.ts';
import { words } from './words.ts';

const bringAccept = () => import('./accept-note.tsx');

const LateAccepted = ({ plan, titles }: Pick<MarginViewProps, 'plan' | 'titles'>): ReactNode => {
  const part = usePart(bringAccept);
  const findings = plan.findings.filter((finding) => !isOpen(finding));
  return part === undefined || findings.length === 0 ? null : (
    <part.AcceptedNotes findings={findings} titles={titles} />
  );
};

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

type Noted = Pick<MarginViewProps, 'boat' | 'notes' | 'titles' | 'lights' | 'onShow'>;

const NoteList = ({
  boat,
  notes,
  titles,
  lights,
  onShow,
  of = 'notes',
}: Noted & { of?: 'notes' | 'other-notes' }): ReactNode => (
  <ol className={of}>
    {notes.map((note) => (
      <NoteView
        key={note.finding.id}
        note={note}
        title={titles.get(note.finding.rule)}
        currency={currencyOf(boat)}
        lights={lights}
        onShow={({ lights: ids }) => {
          putHintAway('note');
          onShow(ids);
        }}
      />
    ))}
  </ol>
);

/** The notes of the step one is at; those of other steps are counted, and told when somebody asks. */
const NotesOfStep = ({ at, ...noted }: Noted & Pick<MarginViewProps, 'at'>): ReactNode => {
  const { here, elsewhere, counts } = useMemo(() => notesByStep(noted.notes, at), [noted.notes, at]);
  const where = counts.map(({ step, count }) => words.countAt(courseWords.step[step], count)).join(', ');
  return (
    <>
      {here.length > 0 ? (
        <NoteList {...noted} notes={here} />
      ) : (
        <p className="calm">{elsewhere.length > 0 ? words.nothingHere : words.nothingToPutRight}</p>
      )}
      {elsewhere.length === 0 ? null : (
        <details className="block notes-elsewhere">
          <summary>{words.elsewhere(elsewhere.length, where)}</summary>
          <NoteList {...noted} notes={elsewhere} of="other-notes" />
        </details>
      )}
    </>
  );
};

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
  const [isReady, setIsReady] = useState(false);
  if (!isReady && step !== undefined && titles.size > 0) setIsReady(true);
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
      {isReady ? (
        <NotesOfStep boat={boat} notes={notes} at={at} titles={titles} lights={lights} onShow={onShow} />
      ) : (
        <p className="calm">{words.checking}</p>
      )}
      {isReady && step !== undefined ? (
        <>
          <LateAccepted plan={plan} titles={titles} />
          <step.Margin boat={boat} plan={plan} hand={{ lights, onShow }} onPull={onPull} />
          <AllWords />
        </>
      ) : null}
    </aside>
  );
};
