import { type ReactNode, useState } from 'react';
import { isTicked, jobTickId, stepTickId } from '../../../../core/work/ticks.ts';
import type { Job, PhaseWork } from '../../../../core/work-shape.ts';
import { cautionWords } from '../../../../papers/power/caution-words.ts';
import { clockWords, dateWords } from '../../../../papers/work/day-words.ts';
import { functionWords } from '../../../../papers/work/function-words.ts';
import { jobWords } from '../../../../papers/work/job-words.ts';
import { lastsWords } from '../../../../papers/work/lasts-words.ts';
import type { PictureInput } from '../../../../papers/work/picture-input.ts';
import { stepWords, toolWords } from '../../../../papers/work/step-words.ts';
import { waitWords } from '../../../../papers/work/wait-words.ts';
import { itemName, jobCables, thingName } from '../../../../papers/work/work-names.ts';
import { useIsLit } from '../../../drawing/light-store.ts';
import { ownSignature } from '../../forms/own-name.ts';
import type { OpenLog } from '../../log/use-boat-log.ts';
import type { RowHand } from '../../margin/lit-rows.tsx';
import { useWords } from '../../words/units.ts';
import { Tick } from './day-paper.tsx';
import { JobSettings } from './job-settings.tsx';
import { LatePart } from './late-part.tsx';
import { words } from './words.ts';

export interface JobRowProps extends Pick<OpenLog, 'log' | 'append'> {
  readonly phase: PhaseWork;
  readonly job: Job;
  readonly input: PictureInput;
  readonly hand: RowHand;
}

const whenWords = ({ phase, job, log }: Pick<JobRowProps, 'phase' | 'job' | 'log'>): string => {
  const tick = log.ticks.get(jobTickId(job.id));
  if (tick?.done === true) return words.doneOn(dateWords(tick.at.slice(0, 10)), tick.by);
  const start = phase.order?.starts.find((one) => one.job === job.id);
  if (start === undefined) return '';
  if (start.hands.length === 0) return words.onlyWaited;
  const hands = start.hands.map((id) => phase.hands.find((one) => one.id === id)?.name ?? id);
  return `${clockWords(phase.from, start.slot)} · ${hands.join(', ')}`;
};

const Why = ({ job, input }: Pick<JobRowProps, 'job' | 'input'>): ReactNode => {
  const jobs = input.phases.flatMap((phase) => phase.jobs);
  const nameOf = (id: string): string => {
    const found = jobs.find((one) => one.id === id);
    return found === undefined ? id : jobWords(input.names, found);
  };
  if (job.after.length === 0 && job.waitsFor.length === 0) return null;
  return (
    <ul className="work-after">
      {job.after.map(({ job: id, why, waitH }) => (
        <li key={id}>
          {words.after(input.numbers.get(id), nameOf(id), waitWords[why])}
          {waitH === undefined ? null : words.waits(waitH)}
        </li>
      ))}
      {job.waitsFor.map(({ id, on }) => (
        <li key={id}>{words.waitsFor(itemName(input.names, id), on === undefined ? undefined : dateWords(on))}</li>
      ))}
    </ul>
  );
};

const Details = ({ phase, job, input, log, append }: JobRowProps): ReactNode => {
  const say = useWords();
  const what = jobWords(input.names, job);
  const cables = jobCables(input.names, job);
  const materials = job.materials.map(
    ({ item, count }) => `${Number(count.toFixed(2))} × ${itemName(input.names, item)}`,
  );
  return (
    <div className="job-details">
      <p className="quiet">
        {[lastsWords(job), ...(job.place === undefined ? [] : [thingName(input.names, job.place)])].join(' · ')}
      </p>
      {cables.length === 0 ? null : <p className="quiet">{words.cables(cables.join(', '))}</p>}
      {job.takes.length === 0 ? null : (
        <p className="work-dark">{words.darkWhile(job.takes.map((id) => functionWords[id]).join(', '))}</p>
      )}
      {cautionWords(job.cautions).map(({ id, title, says }) => (
        <p key={id} className="work-caution">
          <strong>{title}.</strong> {say(says)}
        </p>
      ))}
      <Why job={job} input={input} />
      {job.steps.map((id) => (
        <Tick key={id} log={log} append={append} of={stepTickId(job.id, id)} says={say(stepWords(id))} what={what} />
      ))}
      {job.tools.length === 0 ? null : <p className="quiet">{words.tools(job.tools.map(toolWords).join(', '))}</p>}
      {materials.length === 0 ? null : <p className="quiet">{say(words.materials(materials.join(', ')))}</p>}
      <JobSettings phase={phase} job={job} name={what} />
      <LatePart boat={input.names.boat} job={job} names={input.names} />
    </div>
  );
};

/** One job: its number, what and when it is, a tick, and all there is to say and settle of it once it is opened. */
export const JobRow = (given: JobRowProps): ReactNode => {
  const { phase, job, input, hand, log, append } = given;
  const say = useWords();
  const [isOpen, setIsOpen] = useState(false);
  const lit = useIsLit(hand.lights, [job.id]);
  const what = jobWords(input.names, job);
  const isDone = isTicked(log, jobTickId(job.id));
  return (
    <li className={`job-row${lit ? ' lit' : ''}${isDone ? ' done' : ''}`} data-job={job.id}>
      <div className="job-head">
        <label className="job-tick">
          <input
            type="checkbox"
            checked={isDone}
            disabled={job.leftOut !== undefined}
            onChange={({ target }) =>
              append({ kind: 'tick', of: jobTickId(job.id), done: target.checked, ...ownSignature() })
            }
          />
          <span className="unseen">{words.doneOf(what)}</span>
        </label>
        <button
          type="button"
          className="row-button"
          aria-expanded={isOpen}
          onClick={() => {
            setIsOpen(!isOpen);
            hand.lights.pick([job.id]);
          }}
          onFocus={() => hand.lights.rest([job.id])}
          onBlur={() => hand.lights.rest([])}
        >
          <span className="work-number">{input.numbers.get(job.id) ?? '–'}</span> {say(what)}
          <span className="row-fact">
            {' '}
            {[
              whenWords({ phase, job, log }),
              ...(job.day === undefined ? [] : [words.held(dateWords(job.day))]),
              ...(job.leftOut === undefined ? [] : [words.isLeftOut(job.leftOut)]),
            ]
              .filter((part) => part !== '')
              .join(' · ')}
          </span>
        </button>
      </div>
      {isOpen ? <Details {...given} /> : null}
    </li>
  );
};
