import { type ReactNode, type SubmitEvent, useId, useState } from 'react';
import type { Parse } from './parse-typed.ts';
import './typed-field.css';

/** What a line asks for; `of` is what of, said to those who do not see where it stands. */
const FieldLabel = ({ label, of }: { label: string; of: string | undefined }): ReactNode => (
  <span>
    {label}
    {of === undefined ? null : <span className="unseen"> ({of})</span>}
  </span>
);

/**
 * One line of a form in the margin: what is typed is put in by Enter, or when the keyboard goes on. `shown` is what stands
 * there now; what cannot be read is said at once and nothing is changed.
 */
export const TypedField = <Value,>({
  label,
  of,
  name,
  shown,
  wrong,
  parse,
  onPut,
  wide = false,
}: {
  label: string;
  of?: string;
  name: string;
  shown: string;
  /** what to write instead */
  wrong: string;
  parse: Parse<Value>;
  onPut: (value: Value) => void;
  wide?: boolean;
}): ReactNode => {
  const [typed, setTyped] = useState<string | undefined>(undefined);
  const [isWrong, setIsWrong] = useState(false);
  const help = useId();
  const put = (): void => {
    if (typed === undefined || typed === shown) {
      setTyped(undefined);
      setIsWrong(false);
      return;
    }
    const value = parse(typed);
    setIsWrong(value === undefined);
    if (value === undefined) return;
    setTyped(undefined);
    onPut(value);
  };
  const submit = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    put();
  };
  return (
    <form className={wide ? 'typed-field wide' : 'typed-field'} onSubmit={submit}>
      <label>
        <FieldLabel label={label} of={of} />
        <input
          name={name}
          autoComplete="off"
          value={typed ?? shown}
          aria-invalid={isWrong}
          aria-describedby={isWrong ? help : undefined}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={put}
          onKeyDown={(event) => {
            if (event.key !== 'Escape' || typed === undefined) return;
            event.stopPropagation();
            setTyped(undefined);
            setIsWrong(false);
          }}
        />
      </label>
      {isWrong ? (
        <p id={help} className="typed-wrong" role="alert">
          {wrong}
        </p>
      ) : null}
    </form>
  );
};

/** One line of a form in which one of a few words is chosen; `none` is what stands for not saying. */
export const ChosenField = <Value extends string>({
  label,
  of,
  value,
  options,
  none,
  onChoose,
}: {
  label: string;
  of?: string;
  value: Value | undefined;
  options: Readonly<Record<Value, string>>;
  none?: string;
  onChoose: (value: Value | undefined) => void;
}): ReactNode => {
  // reason: the keys of a record of words are its words
  const values = Object.keys(options) as Value[];
  return (
    <div className="typed-field">
      <label>
        <FieldLabel label={label} of={of} />
        <select value={value ?? ''} onChange={(event) => onChoose(values.find((one) => one === event.target.value))}>
          {none === undefined ? null : <option value="">{none}</option>}
          {values.map((one) => (
            <option key={one} value={one}>
              {options[one]}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
};

/** One line of a form that is ticked or not. */
export const TickedField = ({
  label,
  isTicked,
  onTick,
}: {
  label: string;
  isTicked: boolean;
  onTick: (isTicked: boolean) => void;
}): ReactNode => (
  <label className="ticked-field">
    <input type="checkbox" checked={isTicked} onChange={(event) => onTick(event.target.checked)} />
    <span>{label}</span>
  </label>
);
