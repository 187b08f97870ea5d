import { type ReactNode, useEffect, useState } from 'react';

/** A day of the calendar, put in when the keyboard goes on or Enter is pressed; emptied it is no longer said. */
export const DateField = ({
  label,
  value,
  onPut,
}: {
  label: string;
  value: string | undefined;
  onPut: (date: string | undefined) => void;
}): ReactNode => {
  const known = value ?? '';
  const [typed, setTyped] = useState(known);
  useEffect(() => setTyped(known), [known]);
  const put = (): void => {
    if (typed !== known) onPut(typed === '' ? undefined : typed);
  };
  return (
    <label className="work-field">
      <span>{label}</span>
      <input
        type="date"
        value={typed}
        onChange={({ target }) => setTyped(target.value)}
        onBlur={put}
        onKeyDown={({ key }) => {
          if (key === 'Enter') put();
        }}
      />
    </label>
  );
};
