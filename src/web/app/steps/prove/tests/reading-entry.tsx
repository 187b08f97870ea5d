import { type ReactNode, type SubmitEvent, useState } from 'react';
import { dockFigures } from '../../../../../core/facts/dock-figures.ts';
import type { TestEntry } from '../../../../../core/tests-shape.ts';
import { figureOf } from '../../fit/sea/typed-figure.ts';
import { words } from './words.ts';

/** What a person found: a figure in the unit of the test, or yes or no. */
export type Answer = { readonly value: number } | { readonly right: boolean };

interface EntryProps {
  readonly kind: TestEntry['kind'];
  readonly unit?: TestEntry['unit'];
  /** what is asked, for who does not see the line above it */
  readonly what: string;
  readonly onAnswer: (answer: Answer) => void;
}

/** A meter that shows an open circuit has a figure too: over all that it can show. */
const openOhm = 10 * dockFigures.openOhm.value;

const FigureEntry = ({ unit, what, onAnswer }: EntryProps): ReactNode => {
  const [text, setText] = useState('');
  const value = figureOf(text);
  const put = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    if (value === undefined) return;
    onAnswer({ value });
    setText('');
  };
  return (
    <form className="test-entry" onSubmit={put}>
      <label>
        <span className="unseen">{words.typed(what)}</span>
        <input
          inputMode="decimal"
          autoComplete="off"
          enterKeyHint="done"
          value={text}
          onChange={({ target }) => setText(target.value)}
        />
      </label>
      <span aria-hidden="true">{unit === undefined ? '' : words.units[unit]}</span>
      <button type="submit" className="test-button" disabled={value === undefined}>
        {words.put}
      </button>
      {unit === 'ohm' ? (
        <button
          type="button"
          className="test-button"
          aria-label={words.isOpenOf(what)}
          onClick={() => onAnswer({ value: openOhm })}
        >
          {words.isOpen}
        </button>
      ) : null}
    </form>
  );
};

const YesNoEntry = ({ what, onAnswer }: EntryProps): ReactNode => (
  <div className="test-entry">
    {[true, false].map((right) => {
      const answer = right ? words.yes : words.no;
      return (
        <button
          key={answer}
          type="button"
          className="test-button"
          aria-label={words.answers(answer, what)}
          onClick={() => onAnswer({ right })}
        >
          {answer}
        </button>
      );
    })}
  </div>
);

/** Where one reading is written down: with one thumb, and with the keyboard of figures. */
export const ReadingEntry = (given: EntryProps): ReactNode =>
  given.kind === 'yes-no' ? <YesNoEntry {...given} /> : <FigureEntry {...given} />;
