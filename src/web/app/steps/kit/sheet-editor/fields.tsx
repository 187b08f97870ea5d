import type { ReactNode } from 'react';

/** A number in a sheet, or nothing where it is not known. */
export const NumberField = ({
  label,
  value,
  onValue,
  step = 'any',
}: {
  label: string;
  value: number | undefined;
  onValue: (value: number | undefined) => void;
  step?: number | 'any';
}): ReactNode => (
  <label className="sheet-field">
    <span>{label}</span>
    <input
      type="number"
      min={0}
      step={step}
      value={value ?? ''}
      onChange={({ target }) => onValue(target.value === '' ? undefined : Number(target.value))}
    />
  </label>
);

/** A line of words in a sheet. */
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
  <label className="sheet-field">
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

/** One of a few in a sheet. */
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
  <label className="sheet-field">
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
