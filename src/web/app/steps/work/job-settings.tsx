import { type ReactNode, type SubmitEvent, useState } from 'react';
import type { Job, PhaseWork } from '../../../../core/work-shape.ts';
import { dateWords, hoursWords } from '../../../../papers/work/day-words.ts';
import { useEdit } from '../../edit-context.ts';
import { TypedField } from '../../forms/typed-field.tsx';
import { DateField } from './date-field.tsx';
import { words } from './words.ts';

const hoursFrom = (text: string): number | undefined => {
  const value = Number(text.replace(',', '.').replace(/\s*h$/, ''));
  return text.trim() !== '' && Number.isFinite(value) && value >= 0 && value <= 1000 ? value : undefined;
};

interface SettingsProps {
  readonly phase: PhaseWork;
  readonly job: Job;
  readonly name: string;
}

const LeaveOut = ({ job, name }: Omit<SettingsProps, 'phase'>): ReactNode => {
  const edit = useEdit();
  const [why, setWhy] = useState('');
  if (job.leftOut !== undefined) {
    return (
      <button
        type="button"
        className="press-link"
        onClick={() =>
          edit([{ edit: 'settle-job', params: { job: job.id, forget: ['leftOut'] } }], words.doAfterAll(name))
        }
      >
        {words.putBackIn}
      </button>
    );
  }
  const put = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    if (why.trim() === '') return;
    edit([{ edit: 'settle-job', params: { job: job.id, leftOut: why.trim() } }], words.leaveOutOf(name));
  };
  return (
    <form className="work-leave" onSubmit={put}>
      <label className="work-field">
        <span>{words.leaveOutWhy}</span>
        <input value={why} maxLength={400} autoComplete="off" onChange={({ target }) => setWhy(target.value)} />
      </label>
      <button type="submit" className="work-button" disabled={why.trim() === ''}>
        {words.leaveOut}
      </button>
    </form>
  );
};

/** What a person settles of one job: its day, who does it, how long it takes, and that it is not done. */
export const JobSettings = ({ phase, job, name }: SettingsProps): ReactNode => {
  const edit = useEdit();
  const isDated = phase.days[0]?.date !== undefined;
  const usual = (job.hoursH.least + job.hoursH.most) / 2;
  return (
    <div className="work-fields">
      {isDated ? (
        <DateField
          label={words.holdTo}
          value={job.day}
          onPut={(day) =>
            edit(
              [
                {
                  edit: 'settle-job',
                  params: day === undefined ? { job: job.id, forget: ['day'] } : { job: job.id, day },
                },
              ],
              day === undefined ? words.letGo(name) : words.pinned(name, dateWords(day)),
            )
          }
        />
      ) : null}
      <label className="work-field">
        <span>{words.givenTo}</span>
        <select
          value={job.hand ?? ''}
          onChange={({ target: { value } }) =>
            edit(
              [
                {
                  edit: 'settle-job',
                  params: value === '' ? { job: job.id, forget: ['hand'] } : { job: job.id, hand: value },
                },
              ],
              words.isGiven(name, phase.hands.find(({ id }) => id === value)?.name),
            )
          }
        >
          <option value="">{words.whoever}</option>
          {phase.hands.map(({ id, name: who }) => (
            <option key={id} value={id}>
              {who}
            </option>
          ))}
        </select>
      </label>
      <TypedField
        label={words.hours}
        of={name}
        name={`hours-${job.id}`}
        shown={hoursWords(usual)}
        wrong={words.hoursWanted}
        parse={hoursFrom}
        onPut={(hoursH) =>
          edit([{ edit: 'settle-job', params: { job: job.id, hoursH } }], words.takesHours(name, hoursWords(hoursH)))
        }
      />
      {job.day === undefined ? null : (
        <button
          type="button"
          className="press-link"
          onClick={() => edit([{ edit: 'settle-job', params: { job: job.id, forget: ['day'] } }], words.letGo(name))}
        >
          {words.letGoOf}
        </button>
      )}
      <LeaveOut job={job} name={name} />
    </div>
  );
};
