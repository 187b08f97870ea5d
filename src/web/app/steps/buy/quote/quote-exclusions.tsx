import { type ReactNode, useEffect, useId, useRef } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import { type ExclusionId, quoteHabits } from '../../../../../core/facts/quote-figures.ts';
import { useEdit } from '../../../edit-context.ts';
import { withTerms } from './quote-terms.tsx';
import { words } from './words.ts';

const linesOf = (text: string): string[] =>
  text
    .split('\n')
    .map((line) => line.trim().slice(0, 400))
    .filter((line) => line !== '')
    .slice(0, 40);

/** What is not part of the quote: the usual sentences, each ticked, and one’s own, a line each. */
export const QuoteExclusions = ({ boat }: { boat: Boat }): ReactNode => {
  const edit = useEdit();
  const area = useRef<HTMLTextAreaElement>(null);
  const help = useId();
  const { includes = [], exclusions = [] } = boat.quote ?? {};
  const shown = exclusions.join('\n');
  useEffect(() => {
    if (area.current !== null && area.current !== document.activeElement) area.current.value = shown;
  }, [shown]);
  const tick = (id: ExclusionId, isOut: boolean, says: string): void => {
    const next = isOut ? includes.filter((one) => one !== id) : [...includes, id];
    const params = withTerms(boat.quote, { includes: next.length === 0 ? undefined : next });
    edit([{ edit: 'set-quote', params }], isOut ? words.isOut(says) : words.isIn(says));
  };
  const write = (text: string): void => {
    const lines = linesOf(text);
    if (lines.join('\n') === shown) return;
    const params = withTerms(boat.quote, { exclusions: lines.length === 0 ? undefined : lines });
    edit([{ edit: 'set-quote', params }], words.exclusionsSet);
  };
  return (
    <>
      <p id={help} className="quiet">
        {words.tickOut}
      </p>
      <ul className="quote-out" aria-describedby={help}>
        {quoteHabits.exclusions.map(({ id, says }) => (
          <li key={id}>
            <label>
              <input
                type="checkbox"
                checked={!includes.includes(id)}
                onChange={(event) => tick(id, event.currentTarget.checked, says)}
              />{' '}
              {says}
            </label>
          </li>
        ))}
      </ul>
      <label className="quote-own">
        {words.ownExclusions}
        <textarea ref={area} rows={3} defaultValue={shown} onBlur={(event) => write(event.currentTarget.value)} />
      </label>
    </>
  );
};
