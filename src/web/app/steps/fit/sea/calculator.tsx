import { type ReactNode, useState } from 'react';
import type { Kit } from '../../../../../core/boat/boat-schema.ts';
import type { SeaMethodId } from '../../../../../core/facts/sea-methods.ts';
import { methodWords } from '../../../../../papers/settings-sheet/sea-rows.ts';
import { useWords } from '../../../words/units.ts';
import type { KeptFields } from './use-kept-fields.ts';
import { words } from './words.ts';

/** What a calculator found: the figure to look at, and what belongs to it. */
export interface Result {
  readonly says: string;
  readonly more: readonly string[];
  /** where it warns */
  readonly isBad?: boolean;
}

/** A field that a wet thumb hits, with the keyboard of figures. */
export const BigField = ({
  label,
  name,
  fields,
  hint,
  isText = false,
}: {
  label: string;
  name: string;
  fields: KeptFields;
  hint?: string;
  isText?: boolean;
}): ReactNode => (
  <label className="sea-field">
    <span>{label}</span>
    <input
      name={name}
      inputMode={isText ? 'text' : 'decimal'}
      autoComplete="off"
      enterKeyHint="next"
      placeholder={hint}
      value={fields.get(name)}
      onChange={({ target }) => fields.set(name, target.value)}
    />
  </label>
);

/** One of a few, as large. */
export const BigChoice = ({
  label,
  name,
  fields,
  choices,
  none,
}: {
  label: string;
  name: string;
  fields: KeptFields;
  choices: readonly (readonly [value: string, says: string])[];
  none?: string;
}): ReactNode => (
  <label className="sea-field">
    <span>{label}</span>
    <select name={name} value={fields.get(name)} onChange={({ target }) => fields.set(name, target.value)}>
      {none === undefined ? null : <option value="">{none}</option>}
      {choices.map(([value, says]) => (
        <option key={value} value={value}>
          {says}
        </option>
      ))}
    </select>
  </label>
);

/** The unit a calculator is for: the one chosen, else the first. */
export const chosenUnit = (units: readonly Kit[], fields: KeptFields): Kit | undefined =>
  units.find(({ id }) => id === fields.get('unit')) ?? units[0];

/** Which unit it is for, where there are several. */
export const UnitChoice = ({ units, fields }: { units: readonly Kit[]; fields: KeptFields }): ReactNode =>
  units.length < 2 ? null : (
    <BigChoice label={words.unit} name="unit" fields={fields} choices={units.map(({ id, name }) => [id, name])} />
  );

/** One calculator: what to fill in, what comes out, how it reckons, and one press that writes it down. */
export const Calculator = ({
  method,
  title,
  caution,
  isWanting = false,
  result,
  missing = words.notYet,
  onWrite,
  picture,
  children,
}: {
  method: SeaMethodId;
  title: string;
  caution: string;
  /** no unit aboard that it is for */
  isWanting?: boolean;
  result: Result | undefined;
  missing?: string;
  onWrite?: (() => void) | undefined;
  picture?: ReactNode;
  children: ReactNode;
}): ReactNode => {
  const say = useWords();
  const [wrote, setWrote] = useState(false);
  const { formula, source } = methodWords(method);
  return (
    <details className="sea-calculator" onChange={() => setWrote(false)}>
      <summary>{title}</summary>
      {isWanting ? (
        <p className="quiet">{words.noUnit}</p>
      ) : (
        <>
          <p className="quiet">{say(caution)}</p>
          <div className="sea-fields">{children}</div>
          <output className={result?.isBad === true ? 'sea-result bad' : 'sea-result'}>
            {result === undefined ? (
              <span className="quiet">{missing}</span>
            ) : (
              <>
                <strong>{say(result.says)}</strong>
                {result.more.map((one) => (
                  <span key={one}>{say(one)}</span>
                ))}
              </>
            )}
          </output>
          {picture}
          <button
            type="button"
            className="sea-write"
            disabled={onWrite === undefined}
            onClick={() => {
              onWrite?.();
              setWrote(true);
            }}
          >
            {wrote ? words.wrote : words.write}
          </button>
          <dl className="sea-method">
            <dt>{words.formula}</dt>
            <dd>{formula}</dd>
            <dt>{words.source}</dt>
            <dd>{source}</dd>
          </dl>
        </>
      )}
    </details>
  );
};
