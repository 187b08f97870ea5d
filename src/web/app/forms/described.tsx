import type { ReactNode } from 'react';
import type { Measure } from '../../../core/boat/measure.ts';
import { withPart } from '../../../core/kit/with-part.ts';
import { ChoiceField, NumberField, TextField } from './fields.tsx';
import { LengthField, MetresField, NumbersField } from './line-fields.tsx';
import { words } from './words.ts';

type Choices<Value extends string> = Readonly<Record<Value, string>>;

/** How a part of this type is asked for. */
type AskOf<Part> = [Part] extends [boolean]
  ? { readonly ask: 'whether' }
  : [Part] extends [number]
    ?
        | { readonly ask: 'number'; readonly step?: number; readonly least?: number }
        /** a length, typed in either unit; `signed` where it may lie below or behind */
        | { readonly ask: 'metres'; readonly signed?: boolean }
    : [Part] extends [Measure]
      ? { readonly ask: 'length' }
      : [Part] extends [readonly number[]]
        ? { readonly ask: 'numbers' }
        : [Part] extends [readonly (infer One extends string)[]]
          ? { readonly ask: 'several'; readonly choices: Choices<One> }
          : [Part] extends [string]
            ? string extends Part
              ?
                  | { readonly ask: 'text'; readonly longest: number; readonly hint?: string }
                  | { readonly ask: 'choice'; readonly choices: Choices<string> }
              : { readonly ask: 'choice'; readonly choices: Choices<Part> }
            : never;

/** One line of a form: which part of a thing it asks for, in what words, and how. One that must be said is never left out. */
export type FieldOf<Of> = {
  [Key in keyof Of & string]-?: {
    readonly key: Key;
    readonly label: string;
    readonly must?: boolean;
  } & AskOf<NonNullable<Of[Key]>>;
}[keyof Of & string];

/** The same, as it is drawn: what fits to what is checked where a form is described. */
interface Drawn {
  readonly key: string;
  readonly label: string;
  readonly must?: boolean;
  readonly ask: 'whether' | 'number' | 'metres' | 'length' | 'numbers' | 'several' | 'text' | 'choice';
  readonly step?: number;
  readonly least?: number;
  readonly signed?: boolean;
  readonly longest?: number;
  readonly hint?: string;
  readonly choices?: Choices<string>;
}

const notKnown = '-';

const withUnknown = (choices: Choices<string>, must: boolean): readonly (readonly [string, string])[] =>
  must ? Object.entries(choices) : [[notKnown, words.notKnown], ...Object.entries(choices)];

const Several = ({
  label,
  chosen,
  choices,
  onChosen,
}: {
  label: string;
  chosen: readonly string[];
  choices: Choices<string>;
  onChosen: (chosen: string[]) => void;
}): ReactNode => (
  <fieldset className="form-several wide">
    <legend>{label}</legend>
    {Object.entries(choices).map(([value, said]) => (
      <label key={value} className="kit-needs">
        <input
          type="checkbox"
          checked={chosen.includes(value)}
          onChange={({ target }) =>
            onChosen(target.checked ? [...chosen, value] : chosen.filter((one) => one !== value))
          }
        />
        <span>{said}</span>
      </label>
    ))}
  </fieldset>
);

const yesOrNo = { yes: words.yes, no: words.no } as const;

const DrawnField = ({
  field: { label, must = false, ask, step, least, signed = false, longest = 60, hint, choices = {} },
  part,
  onPart,
}: {
  field: Drawn;
  part: unknown;
  onPart: (part: unknown) => void;
}): ReactNode => {
  // reason: AskOf lets a form ask for a part only by what its type is
  switch (ask) {
    case 'whether':
      return (
        <ChoiceField
          label={label}
          value={part === undefined ? notKnown : part === true ? 'yes' : 'no'}
          choices={withUnknown(yesOrNo, must)}
          onValue={(value) => onPart(value === notKnown ? undefined : value === 'yes')}
        />
      );
    case 'choice':
      return (
        <ChoiceField
          label={label}
          value={part === undefined && !must ? notKnown : (part as string | undefined)}
          choices={withUnknown(choices, must)}
          onValue={(value) => onPart(value === notKnown ? undefined : value)}
        />
      );
    case 'number':
      return (
        <NumberField
          label={label}
          value={part as number | undefined}
          {...(step === undefined ? {} : { step })}
          {...(least === undefined ? {} : { least })}
          onValue={(value) => onPart(value ?? (must ? 0 : undefined))}
        />
      );
    case 'metres':
      return (
        <MetresField
          label={label}
          value={part as number | undefined}
          signed={signed}
          onValue={(value) => onPart(value ?? (must ? 0 : undefined))}
        />
      );
    case 'text':
      return (
        <TextField
          label={label}
          value={(part as string | undefined) ?? ''}
          longest={longest}
          {...(hint === undefined ? {} : { hint })}
          onValue={(value) => onPart(value === '' ? undefined : value)}
        />
      );
    case 'length':
      return <LengthField label={label} value={part as Measure | undefined} onValue={onPart} />;
    case 'numbers':
      return <NumbersField label={label} value={part as readonly number[] | undefined} onValue={onPart} />;
    case 'several':
      return (
        <Several
          label={label}
          chosen={(part as readonly string[] | undefined) ?? []}
          choices={choices}
          onChosen={(chosen) => onPart(chosen.length === 0 && !must ? undefined : chosen)}
        />
      );
  }
};

/** The lines of a form, from their description: each says one part of a thing, or that it is not known. */
export const DescribedFields = <Of extends object>({
  of,
  fields,
  onOf,
}: {
  of: Of;
  fields: readonly FieldOf<Of>[];
  onOf: (of: Of) => void;
}): ReactNode =>
  // reason: FieldOf names parts of the thing only, and asks for each by what its type is
  (fields as readonly unknown[] as readonly Drawn[]).map((field) => (
    <DrawnField
      key={field.key}
      field={field}
      part={new Map<string, unknown>(Object.entries(of)).get(field.key)}
      onPart={(part) => onOf(withPart(of, field.key as keyof Of, part as Of[keyof Of]))}
    />
  ));

/** A part of a thing that may be missing: added, filled in, taken out again. `first` is what stands there when it is added. */
export const OptionalPart = <Of extends object>({
  heading,
  add,
  of,
  first,
  fields,
  onOf,
  children,
}: {
  heading: string;
  add: string;
  of: Of | undefined;
  first: Of;
  fields: readonly FieldOf<Of>[];
  onOf: (of: Of | undefined) => void;
  children?: ReactNode;
}): ReactNode => (
  <details className="form-part">
    <summary>{heading}</summary>
    {of === undefined ? (
      <button type="button" className="press-link" onClick={() => onOf(first)}>
        {add}
      </button>
    ) : (
      <>
        <div className="form-fields">
          <DescribedFields of={of} fields={fields} onOf={onOf} />
        </div>
        {children}
        <button type="button" className="press-link" onClick={() => onOf(undefined)}>
          {words.takeOut}
        </button>
      </>
    )}
  </details>
);
