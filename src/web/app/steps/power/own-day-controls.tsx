import { type ReactNode, type SubmitEvent, useEffect, useId, useRef, useState } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { OwnDay, StandardDay } from '../../../../core/boat/own-day.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { isStandardDay } from '../../../../papers/energy/day-name.ts';
import type { EnergyUnitRow } from '../../../../papers/energy/energy-days.ts';
import { dayLike, hoursFrom, unitsBesides, withHours } from '../../../../papers/energy/own-day.ts';
import { useEdit } from '../../edit-context.ts';
import { words } from './words.ts';

/** Hours a day that one unit runs, put in with Enter or by leaving the field; left empty it runs as usual. */
export const HoursField = ({ day, row }: { day: OwnDay; row: EnergyUnitRow }): ReactNode => {
  const edit = useEdit();
  const [isWrong, setIsWrong] = useState(false);
  const help = useId();
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
    const title =
      hours === undefined ? words.runsAsUsual(day.name, row.name) : words.runsHours(day.name, row.name, hours);
    edit([{ edit: 'set-day', params: withHours(day, row.kit, hours) }], title);
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
        <span className="unseen">{words.hoursOf(row.name)}</span>
        <input
          ref={field}
          name="hours"
          inputMode="decimal"
          autoComplete="off"
          defaultValue={row.hours}
          aria-invalid={isWrong}
          aria-describedby={isWrong ? help : undefined}
          onBlur={(event) => put(event.currentTarget.value)}
        />{' '}
        {words.hour}
      </label>
      {isWrong ? (
        <span id={help} role="alert">
          {words.hoursWanted}
        </span>
      ) : null}
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
      {words.makeOwn}
    </button>
  );
};

/** Puts in a unit that does not run that day, and says how often the bank is charged, or takes the day out. */
const Own = ({ boat, plan, day }: { boat: Boat; plan: Plan; day: OwnDay }): ReactNode => {
  const edit = useEdit();
  const besides = unitsBesides(boat, plan, day.id);
  const set = (next: OwnDay, title: string): void => edit([{ edit: 'set-day', params: next }], title);
  return (
    <>
      {besides.length === 0 ? null : (
        <label>
          <span className="unseen">{words.otherUnit}</span>
          <select
            value=""
            onChange={({ currentTarget: { value } }) =>
              set(
                withHours(day, value, 1),
                words.runsAnHour(day.name, besides.find(({ id }) => id === value)?.name ?? value),
              )
            }
          >
            <option value="" disabled={true}>
              {words.putInOther}
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
        {words.chargedAfter}{' '}
        <select
          value={day.chargedAfter ?? 1}
          onChange={({ currentTarget: { value } }) =>
            set({ ...day, chargedAfter: Number(value) }, words.isChargedAfter(day.name, value))
          }
        >
          {[...new Set([1, 2, 3, 4, 5, 7, 10, 14, day.chargedAfter ?? 1])]
            .sort((one, other) => one - other)
            .map((days) => (
              <option key={days} value={days}>
                {words.days(days)}
              </option>
            ))}
        </select>
      </label>
      <button
        type="button"
        className="press-link"
        onClick={() => edit([{ edit: 'remove-day', params: { day: day.id } }])}
      >
        {words.takeDayOut}
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
