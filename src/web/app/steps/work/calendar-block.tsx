import type { ReactNode } from 'react';
import { type Work, weekdays } from '../../../../core/boat/work.ts';
import { useEdit } from '../../edit-context.ts';
import { TickedField, TypedField } from '../../forms/typed-field.tsx';
import type { StepMarginProps } from '../step.ts';
import { DateField } from './date-field.tsx';
import { SpanList } from './span-list.tsx';
import { useWork } from './use-work.ts';
import { words } from './words.ts';

const hourFrom =
  (least: number, most: number) =>
  (text: string): number | undefined => {
    const hour = Number(text.replace(',', '.').replace(/\s*h$/, ''));
    return text.trim() !== '' && hour >= least && hour <= most ? hour : undefined;
  };

const spanKinds = ['ashore', 'mastDown', 'foul', 'moves', 'left'] as const;

const Hours = ({ work, perDay, from }: { work: Work; perDay: number; from: number }): ReactNode => {
  const edit = useEdit();
  const rest = work.restDays ?? [];
  return (
    <>
      <div className="work-fields">
        <TypedField
          label={words.hoursADay}
          name="hours-a-day"
          shown={String(work.hoursADay ?? perDay / 2)}
          wrong={words.hoursWanted}
          parse={hourFrom(1, 16)}
          onPut={(hoursADay) => edit([{ edit: 'set-work', params: { hoursADay } }])}
        />
        <TypedField
          label={words.fromHour}
          name="from-hour"
          shown={String(work.fromH ?? from / 2)}
          wrong={words.hourWanted}
          parse={hourFrom(0, 22)}
          onPut={(fromH) => edit([{ edit: 'set-work', params: { fromH } }])}
        />
      </div>
      <fieldset className="work-week">
        <legend>{words.restDays}</legend>
        {weekdays.map((day) => (
          <TickedField
            key={day}
            label={words.weekdays[day]}
            isTicked={rest.includes(day)}
            onTick={(is) =>
              edit([
                { edit: 'set-work', params: { restDays: is ? [...rest, day] : rest.filter((one) => one !== day) } },
              ])
            }
          />
        ))}
      </fieldset>
    </>
  );
};

/** When the work begins, what a day of it is, and what the calendar allows. */
export const CalendarBlock = ({ boat, plan }: StepMarginProps): ReactNode => {
  const edit = useEdit();
  const { input } = useWork(boat, plan);
  if (input === undefined || input.phases.length === 0) return null;
  const { work = {} } = boat;
  return (
    <section className="block work-block">
      <h2>{words.calendar}</h2>
      <div className="work-fields">
        {input.phases.map(({ phase }) => (
          <DateField
            key={phase}
            label={input.phases.length > 1 ? words.firstDayOf(phase) : words.firstDay}
            value={work.starts?.find((start) => start.phase === phase)?.on}
            onPut={(on) =>
              edit(
                on === undefined
                  ? [{ edit: 'set-work', params: { forget: ['starts'] } }]
                  : [{ edit: 'set-work', params: { starts: [{ phase, on }] } }],
              )
            }
          />
        ))}
        <DateField
          label={words.doneBy}
          value={work.doneBy}
          onPut={(doneBy) =>
            edit([{ edit: 'set-work', params: doneBy === undefined ? { forget: ['doneBy'] } : { doneBy } }])
          }
        />
      </div>
      <details className="work-fold">
        <summary>{words.dayOfWork}</summary>
        <Hours work={work} perDay={input.phases[0]?.perDay ?? 16} from={input.phases[0]?.from ?? 16} />
      </details>
      {spanKinds.map((kind) => (
        <details key={kind} className="work-fold">
          <summary>{words.spans[kind].head(work[kind]?.length ?? 0)}</summary>
          <SpanList
            title={words.spans[kind].title}
            spans={work[kind] ?? []}
            none={words.spans[kind].none}
            onSpans={(spans) => edit([{ edit: 'set-work', params: { [kind]: spans } }])}
          />
        </details>
      ))}
      <TickedField
        label={words.aisWanted}
        isTicked={work.aisWanted === true}
        onTick={(aisWanted) =>
          edit([{ edit: 'set-work', params: aisWanted ? { aisWanted } : { forget: ['aisWanted'] } }])
        }
      />
    </section>
  );
};
