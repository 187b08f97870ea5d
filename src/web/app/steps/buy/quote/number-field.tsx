import { type ReactNode, type SubmitEvent, useEffect, useId, useRef, useState } from 'react';
import { words } from './words.ts';

interface NumberFieldProps {
  readonly label: string;
  /** the label stands on the page already */
  readonly isUnseen?: boolean;
  /** what stands in the field; empty where it is as usual */
  readonly shown: string;
  readonly usual?: string;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  /** undefined where the field was left empty */
  readonly onPut: (value: number | undefined) => void;
}

/** A number with its unit, put in with Enter or by leaving the field; left empty it is as usual. */
export const NumberField = ({ label, isUnseen = false, shown, usual, unit, ...field }: NumberFieldProps): ReactNode => {
  const { least, most, onPut } = field;
  const input = useRef<HTMLInputElement>(null);
  const last = useRef(shown);
  const [isWrong, setIsWrong] = useState(false);
  const help = useId();
  useEffect(() => {
    if (input.current === null || input.current === document.activeElement) return;
    input.current.value = shown;
    last.current = shown;
  }, [shown]);
  const put = (text: string): void => {
    const said = text.trim().replace(',', '.');
    // Enter puts it in, and leaving the field after it must not do so again
    if (said === last.current) return;
    const value = said === '' ? undefined : Number(said);
    const fits = value === undefined || (value >= least && value <= most);
    setIsWrong(!fits);
    if (!fits) return;
    last.current = said;
    onPut(value);
  };
  return (
    <form
      className="quote-field"
      onSubmit={(event: SubmitEvent<HTMLFormElement>) => {
        event.preventDefault();
        put(input.current?.value ?? '');
      }}
    >
      <label>
        <span className={isUnseen ? 'unseen' : undefined}>{label} </span>
        <input
          ref={input}
          inputMode="decimal"
          autoComplete="off"
          defaultValue={shown}
          placeholder={usual}
          aria-invalid={isWrong}
          aria-describedby={isWrong ? help : undefined}
          onBlur={(event) => put(event.currentTarget.value)}
        />{' '}
        {unit}
      </label>
      {isWrong ? (
        <span id={help} role="alert">
          {words.wrongNumber(least, most)}
        </span>
      ) : null}
    </form>
  );
};
