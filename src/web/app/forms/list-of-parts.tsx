import type { ReactNode } from 'react';
import { DescribedFields, type FieldOf } from './described.tsx';
import { words } from './words.ts';

/** Parts of one kind, as many as there are: each filled in, added, taken out. */
export const ListOfParts = <Of extends object>({
  heading,
  add,
  nameOf,
  first,
  all = [],
  fields,
  onAll,
}: {
  heading: string;
  add: string;
  nameOf: (number: number) => string;
  /** what stands in one that is added */
  first: Of;
  all: readonly Of[] | undefined;
  fields: readonly FieldOf<Of>[];
  /** none at all stands nowhere */
  onAll: (all: Of[] | undefined) => void;
}): ReactNode => {
  const put = (next: Of[]): void => onAll(next.length === 0 ? undefined : next);
  return (
    <details className="form-part">
      <summary>{all.length === 0 ? heading : `${heading} (${all.length})`}</summary>
      {all.map((one, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: parts have no names, and stand in the order they were added in
        <fieldset key={at}>
          <legend>{nameOf(at + 1)}</legend>
          <div className="form-fields">
            <DescribedFields
              of={one}
              fields={fields}
              onOf={(next) => put(all.map((old, i) => (i === at ? next : old)))}
            />
          </div>
          <button type="button" className="press-link" onClick={() => put(all.filter((_, i) => i !== at))}>
            {words.takeOut}
            <span className="unseen"> {nameOf(at + 1)}</span>
          </button>
        </fieldset>
      ))}
      <button type="button" className="press-link" onClick={() => put([...all, first])}>
        {add}
      </button>
    </details>
  );
};
