import { type ReactNode, type SubmitEvent, useEffect, useRef, useState } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { OwnDay, StandardDay } from '../../../../core/boat/own-day.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { isStandardDay } from '../../../../papers/energy/day-name.ts';
import type { EnergyUnitRow } from '../../../../papers/energy/energy-days.ts';
import { dayLike, hoursFrom, unitsBesides, withHours } from '../../../../papers/energy/own-day.ts';
import { useEdit } from '../../edit-context.ts';

/** Hours a day that one unit runs, put in with Enter or by leaving the field; left empty it runs as usual. */
export const HoursField = ({ day, row }: { day: OwnDay; row: EnergyUnitRow }): ReactNode => {
  const edit = useEdit();
  const [isWrong, setIsWrong] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  // Enter puts the hours in, and leaving the field after it must not do so again
  const last = useRef(row.hours);
  useEffect(() => {
    if (field.current === null || field.current === document.activeElement) return;
    field.current.value = row.hours;
    last.current = row.hours;
  }, [row.hours]);
  const put = (text: string): void => {
    if (text.trim() === last.current) return;
    last.current = text.trim();
    const hours = hoursFrom(text);
    setIsWrong(hours === undefined && text.trim() !== '');
    if (hours === undefined && text.trim() !== '') return;
    const says = hours === undefined ? 'runs as usual' : `runs ${hours} h`;
    edit([{ edit: 'set-day', params: withHours(day, row.kit, hours) }], `${day.name}: ${row.name} ${says}.`);
  };
  return (
    <form
      className="hours-field"
      onSubmit={(event: SubmitEvent<HTMLFormElement>) => {
        event.preventDefault();
        put(String(new FormData(event.currentTarget).get('hours') ?? ''));
      }}
    >
      <label>
        <span className="unseen">Hours a day of {row.name}</span>
        <input
          ref={field}
          name="hours"
          inputMode="decimal"
          autoComplete="off"
          defaultValue={row.hours}
          aria-invalid={isWrong}
          onBlur={(event) => put(event.currentTarget.value)}
        />{' '}
        h
      </label>
      {isWrong ? <span role="alert">0 to 24, please.</span> : null}
    </form>
  );
};

/** Makes a standard day one's own. */
const OwnIt = ({ boat, like }: { boat: Boat; like: StandardDay }): ReactNode => {
  const edit = useEdit();
  return (
    <button
      type="button"
      className="press-link"
      onClick={() => edit([{ edit: 'set-day', params: dayLike(boat, like) }])}
    >
      make it a day of your own
    </button>
  );
};

/** Puts in a unit that does not run that day, and says how often the bank is charged, or takes the day out. */
const Own = ({ boat, plan, day }: { boat: Boat; plan: Plan; day: OwnDay }): ReactNode => {
  const edit = useEdit();
  const besides = unitsBesides(boat, plan, day.id);
  const set = (next: OwnDay, says: string): void => edit([{ edit: 'set-day', params: next }], `${day.name}: ${says}`);
  return (
    <>
      {besides.length === 0 ? null : (
        <label>
          <span className="unseen">Put in the hours of another unit</span>
          <select
            value=""
            onChange={({ currentTarget: { value } }) =>
              set(withHours(day, value, 1), `${besides.find(({ id }) => id === value)?.name ?? value} runs an hour.`)
            }
          >
            <option value="" disabled={true}>
              put in another unit …
            </option>
            {besides.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </label>
      )}
      <label>
        charged after{' '}
        <select
          value={day.chargedAfter ?? 1}
          onChange={({ currentTarget: { value } }) =>
            set({ ...day, chargedAfter: Number(value) }, `charged after ${value} of them.`)
          }
        >
          {[...new Set([1, 2, 3, 4, 5, 7, 10, 14, day.chargedAfter ?? 1])]
            .sort((one, other) => one - other)
            .map((days) => (
              <option key={days} value={days}>
                {days === 1 ? '1 day' : `${days} days`}
              </option>
            ))}
        </select>
      </label>
      <button
        type="button"
        className="press-link"
        onClick={() => edit([{ edit: 'remove-day', params: { day: day.id } }])}
      >
        take this day out
      </button>
    </>
  );
};

/** What can be done with a day: a standard one is made one's own, one's own is changed or taken out. */
export const DayControls = ({ boat, plan, when }: { boat: Boat; plan: Plan; when: string }): ReactNode => {
  const day = boat.days?.find(({ id }) => id === when);
  return (
    <div className="day-controls">
      {day === undefined ? null : <Own boat={boat} plan={plan} day={day} />}
      {isStandardDay(when) ? <OwnIt boat={boat} like={when} /> : null}
    </div>
  );
};
