import { type ReactNode, type SubmitEvent, useState } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { PhaseWork } from '../../../../core/work-shape.ts';
import { useEdit } from '../../edit-context.ts';
import { todayIso } from '../binder/today-iso.ts';
import { words } from './words.ts';

/** Asks on which day the first phase begins, which turns counted days into dates. */
export const StartField = ({
  boat,
  phases,
  says,
}: {
  boat: Boat;
  phases: readonly PhaseWork[];
  says: string;
}): ReactNode => {
  const edit = useEdit();
  const first = phases[0]?.phase ?? 1;
  const known = boat.work?.starts?.find(({ phase }) => phase === first)?.on;
  const [on, setOn] = useState(known ?? todayIso());
  const put = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    if (on !== '') edit([{ edit: 'set-work', params: { starts: [{ phase: first, on }] } }]);
  };
  return (
    <form className="work-start" onSubmit={put}>
      <p>{says}</p>
      <label>
        <span>{words.firstDay}</span> <input type="date" value={on} onChange={({ target }) => setOn(target.value)} />
      </label>
      <button type="submit" className="work-button">
        {words.begin}
      </button>
    </form>
  );
};
