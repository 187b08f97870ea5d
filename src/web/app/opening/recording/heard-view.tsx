import type { ReactNode } from 'react';
import type { Heard } from '../../../../core/proof/survey/heard.ts';
import { words } from './words.ts';

/** What a recording holds: in sum, what can be made of it, then one row a unit with what it is and what it sends. */
export const HeardView = ({ heard, children }: { heard: Heard; children?: ReactNode }): ReactNode => (
  <>
    <p>
      {words.heard({ ...heard, units: heard.units.length })}
      {heard.broken === 0 ? null : ` ${words.broken(heard)}`}
    </p>
    <p className="quiet">{words.masked}</p>
    {children}
    <ol className="heard">
      {heard.units.map(({ number, what, sends, unclaimed }) => (
        <li key={number}>
          <span className="heard-what">
            <span className="figure">{number}</span> {what}
          </span>
          <span>
            {words.sends} {sends}
            {unclaimed ? <span className="quiet"> · {words.unclaimed}</span> : null}
          </span>
        </li>
      ))}
    </ol>
  </>
);
