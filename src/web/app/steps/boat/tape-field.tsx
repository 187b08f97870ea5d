import { type ReactNode, type SubmitEvent, useId, useState } from 'react';
import type { Way } from '../../../../core/boat/boat-schema.ts';
import { parseLength } from '../../../../core/units/parse-length.ts';
import { useEdit } from '../../edit-context.ts';
import { words } from './words.ts';

/** No tape reads finer than a millimetre. */
const toMillimetre = (valueM: number): number => Math.round(valueM * 1000) / 1000;

/** A way that is taped leaves the list of those to tape, so the keyboard goes on to the next one. */
const focusOnNext = (form: HTMLFormElement): void => {
  const fields = [...(form.closest('ul')?.querySelectorAll<HTMLInputElement>('.tape-field input') ?? [])];
  const here = fields.findIndex((field) => form.contains(field));
  const next = fields[here + 1] ?? fields[here - 1] ?? form.closest<HTMLElement>('.margin');
  next?.focus();
};

/** Takes the taped length of a way, in metres or in feet and inches, and puts it into the boat. */
export const TapeField = ({ way, name }: { way: Way; name: string }): ReactNode => {
  const edit = useEdit();
  const [isWrong, setIsWrong] = useState(false);
  const help = useId();
  const put = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const form = event.currentTarget;
    const valueM = parseLength(String(new FormData(form).get('length') ?? ''));
    setIsWrong(valueM === undefined);
    if (valueM === undefined) return;
    form.reset();
    if (way.length.how === 'guessed') focusOnNext(form);
    edit([{ edit: 'tape-length', params: { way: way.id, length: { valueM: toMillimetre(valueM), how: 'taped' } } }]);
  };
  return (
    <form className="tape-field" onSubmit={put}>
      <label>
        <span className="unseen">{words.tapedFrom(name)}</span>
        <input
          name="length"
          autoComplete="off"
          placeholder={words.tapedHint}
          aria-invalid={isWrong}
          aria-describedby={isWrong ? help : undefined}
        />
      </label>
      <button type="submit" className="tape-put" aria-label={words.putInTaped(name)}>
        {words.putInLength}
      </button>
      {isWrong ? (
        <p id={help} className="tape-wrong" role="alert">
          {words.lengthWanted}
        </p>
      ) : null}
    </form>
  );
};
