import { type ReactNode, useCallback, useMemo } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { daySheet } from '../../../../papers/work/day-sheet.ts';
import { dateWords, dayOfPhase } from '../../../../papers/work/day-words.ts';
import { jobWords } from '../../../../papers/work/job-words.ts';
import type { PictureInput } from '../../../../papers/work/picture-input.ts';
import type { LightStore } from '../../../drawing/light-store.ts';
import { useEdit } from '../../edit-context.ts';
import { dayChosen, daysToChoose } from './day-choice.ts';
import { DayKey } from './day-key.tsx';
import { DayPaper } from './day-paper.tsx';
import { GlanceLine } from './glance-line.tsx';
import { StartField } from './start-field.tsx';
import { type OpenWork, useWork } from './use-work.ts';
import { useWorkCommands } from './use-work-commands.ts';
import { words } from './words.ts';
import { type PinJob, WorkDrawing } from './work-drawing.tsx';
import { type DayAt, showWork, useWorkView } from './work-view.ts';
import './work.css';
import './day-paper.css';
import './job-row.css';

interface RoomProps {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly lights: LightStore;
}

const keyOf = ({ phase, day }: DayAt): string => `${phase}.${day}`;

const DayChoice = ({ input, at }: { input: PictureInput; at: DayAt | undefined }): ReactNode => {
  const { shows } = useWorkView();
  const days = daysToChoose(input);
  const place = days.findIndex(({ phase, day }) => phase === at?.phase && day === at.day);
  const go = (to: DayAt | undefined): void => {
    if (to !== undefined) showWork({ shows, at: to });
  };
  return (
    <>
      <button type="button" aria-label={words.dayBefore} disabled={place <= 0} onClick={() => go(days[place - 1])}>
        ‹
      </button>
      <label>
        <span className="unseen">{words.day}</span>
        <select
          value={at === undefined ? '' : keyOf(at)}
          onChange={({ target }) => go(days.find((one) => keyOf(one) === target.value))}
        >
          {days.map((one) => {
            const phase = input.phases.find((own) => own.phase === one.phase);
            const name = phase === undefined ? '' : dayOfPhase(phase, one.day);
            return (
              <option key={keyOf(one)} value={keyOf(one)}>
                {input.phases.length > 1 ? words.dayInPhase(one.phase, name) : name}
              </option>
            );
          })}
        </select>
      </label>
      <button
        type="button"
        aria-label={words.dayAfter}
        disabled={place < 0 || place === days.length - 1}
        onClick={() => go(days[place + 1])}
      >
        ›
      </button>
    </>
  );
};

const SearchLine = ({
  isSearching,
  fault,
  stop,
}: Pick<OpenWork, 'isSearching' | 'stop'> & { fault: string | undefined }): ReactNode => (
  <p className="work-search" role="status">
    {fault === undefined ? null : words.fault(fault)}
    {isSearching ? (
      <>
        {words.searching}{' '}
        <button type="button" className="press-link" onClick={stop}>
          {words.stop}
        </button>
      </>
    ) : null}
  </p>
);

const WorkTools = ({ input, at, open }: { input: PictureInput; at: DayAt | undefined; open: OpenWork }): ReactNode => {
  const { shows } = useWorkView();
  return (
    <div className="sheet-tools work-tools">
      {(['days', 'day'] as const).map((one) => (
        <button
          key={one}
          type="button"
          aria-pressed={shows === one}
          onClick={() => showWork({ shows: one, ...(at === undefined ? {} : { at }) })}
        >
          {words.shows[one]}
        </button>
      ))}
      {at === undefined ? null : <DayChoice input={input} at={at} />}
      {at === undefined ? null : (
        <button type="button" onClick={() => window.print()}>
          {words.print}
        </button>
      )}
      <SearchLine isSearching={open.isSearching} fault={open.fault} stop={open.stop} />
    </div>
  );
};

const Room = ({ boat, lights, open, input }: RoomProps & { open: OpenWork; input: PictureInput }): ReactNode => {
  const edit = useEdit();
  const view = useWorkView();
  const at = useMemo(() => dayChosen(input, view.at), [input, view.at]);
  const phase = input.phases.find((own) => own.phase === at?.phase);
  const sheet = useMemo(
    () => (at === undefined || phase === undefined ? undefined : daySheet(input, phase, at.day)),
    [input, at, phase],
  );
  const isDated = input.phases.every(({ days }) => days[0]?.date !== undefined);
  const onPin: PinJob = useCallback(
    (job, date) => {
      const known = input.phases.flatMap(({ jobs }) => jobs).find(({ id }) => id === job);
      const name = known === undefined ? job : jobWords(input.names, known);
      if (date !== undefined)
        edit([{ edit: 'settle-job', params: { job, day: date } }], words.pinned(name, dateWords(date)));
      else if (known?.day !== undefined)
        edit([{ edit: 'settle-job', params: { job, forget: ['day'] } }], words.letGo(name));
    },
    [edit, input],
  );
  useWorkCommands(at);
  return (
    <section className="work-room" aria-label={words.room(boat.name)}>
      {isDated ? null : <StartField boat={boat} phases={input.phases} says={words.countedDays} />}
      <GlanceLine input={input} lights={lights} at={at} />
      {view.shows === 'days' || sheet === undefined ? (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it
        <section className="work-scroll" tabIndex={0} aria-label={words.days}>
          <WorkDrawing input={input} lights={lights} onPin={onPin} at={at} />
          {sheet === undefined ? null : <DayKey sheet={sheet} lights={lights} />}
          <p className="work-legend">{words.legend}</p>
        </section>
      ) : (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: as above
        <section className="work-scroll" tabIndex={0} aria-label={words.shows.day}>
          <DayPaper sheet={sheet} boatName={boat.name} log={open.log} append={open.append} />
        </section>
      )}
      <WorkTools input={input} at={at} open={open} />
    </section>
  );
};

/** The days of the work in place of the drawing; where there is nothing to do yet, what to do next. */
export const WorkRoom = ({ boat, plan, lights }: RoomProps): ReactNode => {
  const open = useWork(boat, plan);
  const { input } = open;
  if (input === undefined) return <p className="work-room work-empty">{words.counting}</p>;
  if (input.phases.every(({ jobs }) => jobs.length === 0)) {
    return (
      <section className="work-room work-empty">
        <h2>{words.emptyHeading}</h2>
        <p>{words.empty}</p>
      </section>
    );
  }
  return <Room boat={boat} plan={plan} lights={lights} open={open} input={input} />;
};
