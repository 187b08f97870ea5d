import { type ReactNode, type SubmitEvent, useState } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Job } from '../../../../core/work-shape.ts';
import { dateWords } from '../../../../papers/work/day-words.ts';
import { itemName, type WorkNames } from '../../../../papers/work/work-names.ts';
import { useEdit } from '../../edit-context.ts';
import { words } from './words.ts';

/** A part that a job takes and that comes late: with the day it is due the rest is planned anew. */
export const LatePart = ({ boat, job, names }: { boat: Boat; job: Job; names: WorkNames }): ReactNode => {
  const edit = useEdit();
  const [item, setItem] = useState('');
  const [due, setDue] = useState('');
  if (job.materials.length === 0) return null;
  const choose = (id: string): void => {
    setItem(id);
    setDue(boat.orders?.find((order) => order.item === id)?.due ?? '');
  };
  const put = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    if (item === '') return;
    const name = itemName(names, item);
    if (due === '') edit([{ edit: 'note-order', params: { item, forget: ['due'] } }], words.dueNoMore(name));
    else edit([{ edit: 'note-order', params: { item, state: 'ordered', due } }], words.isDue(name, dateWords(due)));
  };
  return (
    <form className="work-fields" onSubmit={put}>
      <label className="work-field">
        <span>{words.latePart}</span>
        <select value={item} onChange={({ target }) => choose(target.value)}>
          <option value="">{words.choose}</option>
          {job.materials.map(({ item: id }) => (
            <option key={id} value={id}>
              {itemName(names, id)}
            </option>
          ))}
        </select>
      </label>
      <label className="work-field">
        <span>{words.due}</span>
        <input type="date" value={due} disabled={item === ''} onChange={({ target }) => setDue(target.value)} />
      </label>
      <button type="submit" className="work-button" disabled={item === ''}>
        {words.put}
      </button>
    </form>
  );
};
