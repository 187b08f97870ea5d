import { type ReactNode, useMemo } from 'react';
import { progressOf } from '../../../../core/work/progress.ts';
import type { PhaseWork } from '../../../../core/work-shape.ts';
import { orderSays } from '../../../../papers/work/cost-words.ts';
import type { PictureInput } from '../../../../papers/work/picture-input.ts';
import { progressPicture } from '../../../../papers/work/progress-picture.ts';
import { daysLeftWords } from '../../../../papers/work/progress-words.ts';
import { relaxSays, stuckSays } from '../../../../papers/work/stuck-words.ts';
import { StillDrawing } from '../../../drawing/still-drawing.tsx';
import { useEdit } from '../../edit-context.ts';
import { OwnNameField } from '../../forms/own-name-field.tsx';
import type { StepMarginProps } from '../step.ts';
import { relaxEdits } from './relax-edits.ts';
import { useWork } from './use-work.ts';
import { words } from './words.ts';

/** As wide as the margin. */
const pictureMm = 74;

const StuckNote = ({
  boat,
  phase,
  input,
}: {
  boat: StepMarginProps['boat'];
  phase: PhaseWork;
  input: PictureInput;
}): ReactNode => {
  const edit = useEdit();
  const { stuck } = phase;
  if (stuck === undefined) return null;
  return (
    <div className="work-stuck" role="status">
      <p>
        <strong>{words.noOrder}</strong> {stuckSays(input, stuck)}
      </p>
      {stuck.relax.length === 0 ? null : <p>{words.anyOf}</p>}
      <ul>
        {stuck.relax.map((relax) => {
          const says = relaxSays(input, relax);
          const edits = relaxEdits(boat, phase, relax);
          return (
            <li key={`${relax.what} ${relax.about.join(' ')}`}>
              {edits.length === 0 ? (
                says
              ) : (
                <button type="button" className="press-link" onClick={() => edit(edits, words.gives(says))}>
                  {says}
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </div>
  );
};

/** What matters of the work: what it costs in dark hours and days, how sure that is, why there is no order, and how far it has come. */
export const MattersBlock = ({ boat, plan }: StepMarginProps): ReactNode => {
  const { work, input, log } = useWork(boat, plan);
  const progress = useMemo(() => progressOf(work === undefined ? plan : { ...plan, work }, log), [plan, work, log]);
  const picture = useMemo(() => progressPicture(progress, pictureMm), [progress]);
  if (input === undefined || input.phases.every(({ jobs }) => jobs.length === 0)) {
    return (
      <section className="block">
        <h2>{words.heading}</h2>
        <p>{input === undefined ? words.counting : words.empty}</p>
      </section>
    );
  }
  return (
    <section className="block work-block">
      <h2>{words.heading}</h2>
      {input.phases.map((phase) => (
        <div key={phase.phase}>
          {input.phases.length > 1 ? <h3>{words.phase(phase.phase)}</h3> : null}
          {orderSays(phase).map((says) => (
            <p key={says}>{says}</p>
          ))}
          {phase.taken.map(({ what, from, to }) => (
            <p key={`${what} ${from}`} className="quiet">
              {words.taken[what](to - from + 1)}
            </p>
          ))}
          <StuckNote boat={boat} phase={phase} input={input} />
        </div>
      ))}
      <p>{daysLeftWords(progress)}</p>
      <StillDrawing drawing={picture} label={picture.title ?? ''} />
      <div className="work-fields">
        <OwnNameField />
      </div>
    </section>
  );
};
