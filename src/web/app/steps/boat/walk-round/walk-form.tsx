import { type ReactNode, type SubmitEvent, useId, useMemo, useState } from 'react';
import type { EditCall } from '../../../../../core/boat/history.ts';
import { useEdit } from '../../../edit-context.ts';
import { keptTyping } from './kept-typing.ts';
import { words } from './words.ts';

/** One blank of a form: a text, or one of a few words. */
interface Blank {
  readonly name: string;
  readonly says: string;
  /** what stands there at first */
  readonly first?: string;
  /** what is hinted while nothing stands there */
  readonly hint?: string;
  readonly choices?: readonly (readonly [value: string, says: string])[];
  readonly isNumber?: boolean;
}

type Typed = (name: string) => string;

const BlankField = ({
  blank: { says, choices, hint, isNumber = false },
  value,
  onValue,
}: {
  blank: Blank;
  value: string;
  onValue: (value: string) => void;
}): ReactNode => {
  const id = useId();
  return (
    <p className="walk-blank">
      <label htmlFor={id}>{says}</label>
      {choices === undefined ? (
        <input
          id={id}
          value={value}
          placeholder={hint}
          autoComplete="off"
          inputMode={isNumber ? 'decimal' : 'text'}
          onChange={(event) => onValue(event.target.value)}
        />
      ) : (
        <select id={id} value={value} onChange={(event) => onValue(event.target.value)}>
          {choices.map(([choice, saysChoice]) => (
            <option key={choice} value={choice}>
              {saysChoice}
            </option>
          ))}
        </select>
      )}
    </p>
  );
};

/**
 * A few blanks that are put in together, by Enter or by a press. What was typed and not put in outlives the page. `read` gives the
 * edits for it, or undefined where it cannot be read.
 */
export const WalkForm = ({
  question,
  what,
  put = words.putIn,
  blanks,
  wrong,
  read,
}: {
  /** names the question among all of the boat, to keep what was typed */
  question: string;
  /** the question, for those who hear it */
  what: string;
  put?: string;
  blanks: readonly Blank[];
  wrong: string;
  read: (typed: Typed) => readonly EditCall[] | undefined;
}): ReactNode => {
  const edit = useEdit();
  const help = useId();
  const kept = useMemo(() => keptTyping(question), [question]);
  const [typed, setTyped] = useState(kept.read);
  const [isWrong, setIsWrong] = useState(false);
  const standsIn = (blank: Blank): string => typed[blank.name] ?? blank.first ?? '';
  const type = (name: string, value: string): void => {
    const now = { ...typed, [name]: value };
    setTyped(now);
    kept.keep(now);
  };
  const submit = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const values = new Map(blanks.map((blank) => [blank.name, standsIn(blank).trim()]));
    const edits = read((name) => values.get(name) ?? '');
    setIsWrong(edits === undefined);
    if (edits === undefined) return;
    kept.forget();
    setTyped({});
    if (edits.length > 0) edit(edits);
  };
  return (
    <form className="walk-blanks" aria-label={what} aria-describedby={isWrong ? help : undefined} onSubmit={submit}>
      {blanks.map((blank) => (
        <BlankField
          key={blank.name}
          blank={blank}
          value={standsIn(blank)}
          onValue={(value) => type(blank.name, value)}
        />
      ))}
      <button type="submit" aria-label={`${put}: ${what}`}>
        {put}
      </button>
      {isWrong ? (
        <p id={help} className="walk-wrong" role="alert">
          {wrong}
        </p>
      ) : null}
    </form>
  );
};
