import { type ReactNode, type SubmitEvent, useState } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import { idOfName } from '../../../../core/boat/id-of-name.ts';
import { useEdit } from '../../edit-context.ts';
import { words } from './words.ts';

const empty = { name: '', hours: '2', place: '' };

/** Jobs that no plan can know of, put in by a person and taken out again. */
export const OwnJobs = ({ boat }: { boat: Boat }): ReactNode => {
  const edit = useEdit();
  const [typed, setTyped] = useState(empty);
  const own = boat.work?.own ?? [];
  const hoursH = Number(typed.hours.replace(',', '.'));
  const isWhole = typed.name.trim() !== '' && hoursH > 0 && hoursH <= 1000;
  const put = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    if (!isWhole) return;
    const name = typed.name.trim();
    const taken = new Set(own.map(({ id }) => id));
    const first = idOfName(name);
    const id = taken.has(first) ? `${first}-${own.length + 1}` : first;
    edit([
      { edit: 'set-own-job', params: { id, name, hoursH, ...(typed.place === '' ? {} : { place: typed.place }) } },
    ]);
    setTyped(empty);
  };
  return (
    <details className="work-fold">
      <summary>{words.ownJobs(own.length)}</summary>
      <ul>
        {own.map(({ id, name, hoursH: lasts }) => (
          <li key={id}>
            {words.ownJob(name, lasts)}{' '}
            <button
              type="button"
              className="press-link"
              aria-label={words.takeOutOf(words.jobs, name)}
              onClick={() => edit([{ edit: 'remove-own-job', params: { job: id } }])}
            >
              {words.takeOut}
            </button>
          </li>
        ))}
      </ul>
      <form className="work-fields" onSubmit={put}>
        <label className="work-field">
          <span>{words.ownName}</span>
          <input
            value={typed.name}
            maxLength={120}
            autoComplete="off"
            onChange={({ target }) => setTyped({ ...typed, name: target.value })}
          />
        </label>
        <label className="work-field">
          <span>{words.hours}</span>
          <input
            inputMode="decimal"
            value={typed.hours}
            onChange={({ target }) => setTyped({ ...typed, hours: target.value })}
          />
        </label>
        <label className="work-field">
          <span>{words.where}</span>
          <select value={typed.place} onChange={({ target }) => setTyped({ ...typed, place: target.value })}>
            <option value="">{words.nowhere}</option>
            {boat.places.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <button type="submit" className="work-button" disabled={!isWhole}>
          {words.add}
        </button>
      </form>
    </details>
  );
};
