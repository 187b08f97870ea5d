import type { ReactNode } from 'react';
import './forms.css';

/** A number in a form, or nothing where it is not known; `least` where it may be below nothing. */
export const NumberField = ({
  label,
  value,
  onValue,
  step = 'any',
  least = 0,
}: {
  label: string;
  value: number | undefined;
  onValue: (value: number | undefined) => void;
  step?: number | 'any';
  least?: number;
}): ReactNode => (
  <label className="form-field">
    <span>{label}</span>
    <input
      type="number"
      min={least}
      step={step}
      // what stands there is mostly typed over, not into
      onFocus={({ target }) => target.select()}
      value={value ?? ''}
      onChange={({ target }) => onValue(target.value === '' ? undefined : Number(target.value))}
    />
  </label>
);

/** A line of words in a form. */
export const TextField = ({
  label,
  value,
  hint,
  longest,
  onValue,
}: {
  label: string;
  value: string;
  hint?: string;
  longest: number;
  onValue: (value: string) => void;
}): ReactNode => (
  <label className="form-field">
    <span>{label}</span>
    <input
      value={value}
      placeholder={hint}
      maxLength={longest}
      autoComplete="off"
      onChange={({ target }) => onValue(target.value)}
    />
  </label>
);

/** One of a few in a form. */
export const ChoiceField = <Value extends string>({
  label,
  value,
  choices,
  onValue,
}: {
  label: string;
  value: Value | undefined;
  choices: readonly (readonly [value: Value, words: string])[];
  onValue: (value: Value) => void;
}): ReactNode => (
  <label className="form-field">
    <span>{label}</span>
    <select
      value={value ?? ''}
      onChange={({ target }) => {
        const chosen = choices.find(([one]) => one === target.value);
        if (chosen !== undefined) onValue(chosen[0]);
      }}
    >
      {value === undefined ? <option value="">…</option> : null}
      {choices.map(([one, said]) => (
        <option key={one} value={one}>
          {said}
        </option>
      ))}
    </select>
  </label>
);
