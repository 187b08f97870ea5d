import { type ReactNode, useMemo } from 'react';
import { isOpen } from '../../../core/accepted-findings.ts';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { currencyOf } from '../../../papers/lists/cure-words.ts';
import type { JobStep } from '../../../papers/next/job-steps.ts';
import type { LightStore } from '../../drawing/light-store.ts';
import { words as courseWords } from '../course/words.ts';
import { putHintAway } from '../hints/hint-store.ts';
import { usePart } from '../use-part.ts';
import { AllWords } from '../words/all-words.tsx';
import { NoteView } from './note-view.tsx';
import type { Note } from './notes.ts';
import { notesByStep } from './notes-by-step.ts';
import { words } from './words.ts';

const bringAccept = () => import('./accept-note.tsx');

/** The notes that somebody has accepted, with why. */
const LateAccepted = ({ plan, titles }: { plan: Plan; titles: ReadonlyMap<string, string> }): ReactNode => {
  const part = usePart(bringAccept);
  const findings = plan.findings.filter((finding) => !isOpen(finding));
  return part === undefined || findings.length === 0 ? null : (
    <part.AcceptedNotes findings={findings} titles={titles} />
  );
};

interface Noted {
  readonly boat: Boat;
  readonly notes: readonly Note[];
  readonly titles: ReadonlyMap<string, string>;
  readonly lights: LightStore;
  readonly onShow: (ids: readonly string[]) => void;
}

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

/** The notes of the step one is at; those of other steps are counted, and told when somebody asks. Under them its figures. */
export const NotesOfStep = ({
  at,
  plan,
  children,
  ...noted
}: Noted & {
  readonly at: JobStep;
  readonly plan: Plan;
  /** the figures of the step; null until it has come */
  readonly children: ReactNode;
}): ReactNode => {
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
      {children === null ? null : (
        <>
          <LateAccepted plan={plan} titles={noted.titles} />
          {children}
          <AllWords />
        </>
      )}
    </>
  );
};
