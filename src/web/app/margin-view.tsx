import type { ReactNode, Ref } from 'react';
import type { Boat, Kit } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { currencyOf } from '../../papers/lists/cure-words.ts';
import type { LightStore } from '../drawing/light-store.ts';
import { FateChoice } from './fate-choice.tsx';
import { NoteView } from './note-view.tsx';
import type { Note } from './notes.ts';
import type { StepId } from './route.ts';
import { StepBlock } from './step-block.tsx';
import type { UnitRow } from './unit-rows.ts';

interface MarginViewProps {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly step: StepId;
  readonly notes: readonly Note[];
  readonly titles: ReadonlyMap<string, string>;
  readonly picked: UnitRow | undefined;
  readonly lights: LightStore;
  readonly onShow: (ids: readonly string[]) => void;
  readonly progress: string | undefined;
  readonly onStop: () => void;
  readonly ref?: Ref<HTMLElement>;
}

/** What was picked on the drawing, in words, so that a balloon without a note answers as well. */
const PickedUnit = ({ row, unit }: { row: UnitRow; unit: Kit | undefined }): ReactNode => (
  <section className="block picked" aria-live="polite">
    <h2>
      {row.balloon === undefined ? null : <span className="figure">{row.balloon} </span>}
      {row.name}
    </h2>
    <p>
      {row.place}
      {row.joined.length === 0 ? '' : `; joined to ${row.joined.join('; ')}`}
    </p>
    {unit === undefined ? null : <FateChoice unit={unit} />}
    {row.notes.length === 0 ? <p className="quiet">Nothing to put right here.</p> : null}
  </section>
);

const Progress = ({ progress, onStop }: { progress: string | undefined; onStop: () => void }): ReactNode => (
  <div className="progress" role="status">
    {progress === undefined ? null : (
      <>
        {progress}{' '}
        <button type="button" onClick={onStop}>
          keep what there is
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
  notes,
  titles,
  picked,
  lights,
  onShow,
  progress,
  onStop,
  ref,
}: MarginViewProps): ReactNode => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it
  <aside className="margin" ref={ref} aria-label="Notes" tabIndex={0}>
    <h2 className="unseen">Notes</h2>
    <Progress progress={progress} onStop={onStop} />
    {picked === undefined ? null : <PickedUnit row={picked} unit={boat.kit.find((unit) => unit.id === picked.id)} />}
    {notes.length === 0 ? (
      <p className="calm">Nothing to put right. Every check that this version makes is content with this boat.</p>
    ) : (
      <ol className="notes">
        {notes.map((note) => (
          <NoteView
            key={note.finding.id}
            note={note}
            title={titles.get(note.finding.rule)}
            currency={currencyOf(boat)}
            lights={lights}
            onShow={({ lights: ids }) => onShow(ids)}
          />
        ))}
      </ol>
    )}
    <StepBlock step={step} boat={boat} plan={plan} hand={{ lights, onShow }} />
  </aside>
);
