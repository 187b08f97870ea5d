import type { ReactNode } from 'react';
import type { DaySheet } from '../../../../papers/work/day-sheet.ts';
import type { LightStore } from '../../../drawing/light-store.ts';
import { useWords } from '../../words/units.ts';
import { words } from './words.ts';

/** What the numbers of one day stand for, under the picture, with what is dark when everybody goes. */
export const DayKey = ({ sheet, lights }: { sheet: DaySheet; lights: LightStore }): ReactNode => {
  const say = useWords();
  const tonight = sheet.dark.filter(({ isTonight }) => isTonight);
  return (
    <section className="day-key" aria-label={words.keyOf(sheet.title)}>
      <h2>{words.keyOf(sheet.title)}</h2>
      <ul>
        {sheet.jobs.map(({ job, number, what, when }) => (
          <li key={job.id}>
            <button
              type="button"
              className="row-button"
              onClick={() => lights.pick([job.id])}
              onFocus={() => lights.rest([job.id])}
              onBlur={() => lights.rest([])}
              onPointerEnter={() => lights.rest([job.id])}
              onPointerLeave={() => lights.rest([])}
            >
              <span className="work-number">{number}</span> {say(what)} <span className="row-fact">{when}</span>
            </button>
          </li>
        ))}
      </ul>
      {tonight.map(({ id, name, fallback }) => (
        <p key={id} className="work-dark">
          {words.darkTonight(name)} {words.haveReady(fallback)}
        </p>
      ))}
    </section>
  );
};
