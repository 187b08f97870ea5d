import { type ReactNode, useId, useState } from 'react';
import type { Measure } from '../../../core/boat/measure.ts';
import { unitsChoice } from '../words/units.ts';
import { ChoiceField } from './fields.tsx';
import { parseSigned, parseTyped, shownLength } from './typed-length.ts';
import { words } from './words.ts';

/** A line that is read once it is left, for what is typed half is no length yet. Nothing typed is nothing known. */
const LineField = <Value,>({
  label,
  shown,
  wrong,
  parse,
  onValue,
}: {
  label: string;
  shown: string;
  wrong: string;
  parse: (text: string) => Value | undefined;
  onValue: (value: Value | undefined) => void;
}): ReactNode => {
  const [typed, setTyped] = useState<string | undefined>(undefined);
  const [isWrong, setIsWrong] = useState(false);
  const help = useId();
  const put = (): void => {
    if (typed === undefined) return;
    const value = parse(typed);
    const isNothing = typed.trim() === '';
    setIsWrong(value === undefined && !isNothing);
    if (value === undefined && !isNothing) return;
    setTyped(undefined);
    if (typed !== shown) onValue(value);
  };
  return (
    <label className="form-field">
      <span>{label}</span>
      <input
        autoComplete="off"
        value={typed ?? shown}
        aria-invalid={isWrong}
        aria-describedby={isWrong ? help : undefined}
        onChange={({ target }) => setTyped(target.value)}
        onBlur={put}
        onKeyDown={({ key }) => {
          if (key === 'Enter') put();
        }}
      />
      {isWrong ? (
        <span id={help} className="form-wrong" role="alert">
          {wrong}
        </span>
      ) : null}
    </label>
  );
};

/** A length in a form, typed in either unit, of which nobody asks how it is known. */
export const MetresField = ({
  label,
  value,
  signed,
  onValue,
}: {
  label: string;
  value: number | undefined;
  signed: boolean;
  onValue: (value: number | undefined) => void;
}): ReactNode => {
  const units = unitsChoice.use();
  return (
    <LineField
      label={label}
      shown={value === undefined ? '' : shownLength(value, units)}
      wrong={words.wrongLength}
      parse={signed ? parseSigned : parseTyped}
      onValue={onValue}
    />
  );
};

const hows = ['papers', 'taped', 'guessed'] as const;

/** A length in a form, typed in either unit, and how it is known. */
export const LengthField = ({
  label,
  value,
  onValue,
}: {
  label: string;
  value: Measure | undefined;
  onValue: (value: Measure | undefined) => void;
}): ReactNode => {
  const units = unitsChoice.use();
  return (
    <>
      <LineField
        label={label}
        shown={value === undefined ? '' : shownLength(value.valueM, units)}
        wrong={words.wrongLength}
        parse={parseTyped}
        onValue={(valueM) =>
          onValue(valueM === undefined ? undefined : { valueM, how: value?.how === 'taped' ? 'taped' : 'papers' })
        }
      />
      {value === undefined ? null : (
        <ChoiceField
          label={words.howOf(label)}
          value={value.how}
          choices={hows.map((how) => [how, words.hows[how]] as const)}
          onValue={(how) => onValue({ ...value, how })}
        />
      )}
    </>
  );
};

const readNumbers = (text: string): number[] | undefined => {
  const numbers = text
    .split(/[\s;,]+/)
    .filter((part) => part !== '')
    .map(Number);
  return numbers.length === 0 || numbers.some((one) => !(one > 0)) ? undefined : numbers;
};

/** A few numbers in a form, such as the volts that something can be set to. */
export const NumbersField = ({
  label,
  value = [],
  onValue,
}: {
  label: string;
  value: readonly number[] | undefined;
  onValue: (value: number[] | undefined) => void;
}): ReactNode => (
  <LineField label={label} shown={value.join(', ')} wrong={words.wrongNumbers} parse={readNumbers} onValue={onValue} />
);
