import { type ReactNode, useState } from 'react';
import { words } from './words.ts';

interface DraftProps<Of> {
  /** whose it is, for those who do not see where it stands */
  readonly whose: string;
  readonly of: Of;
  readonly onKeep: (of: Of) => void;
  readonly children: (draft: Of, put: (draft: Of) => void) => ReactNode;
}

const Draft = <Of extends object>({ whose, of, onKeep, children }: DraftProps<Of>): ReactNode => {
  const [draft, setDraft] = useState(of);
  return (
    <>
      {children(draft, setDraft)}
      <button type="button" className="press-link" onClick={() => onKeep(draft)}>
        {words.keep}
        <span className="unseen"> ({whose})</span>
      </button>
    </>
  );
};

/** A form that is folded away until somebody wants it, and kept as one step once it is all written. */
export const DraftForm = <Of extends object>({
  heading,
  ...given
}: DraftProps<Of> & { heading: string }): ReactNode => (
  <details className="form-part draft-form">
    <summary>
      {heading}
      <span className="unseen"> ({given.whose})</span>
    </summary>
    <Draft key={JSON.stringify(given.of)} {...given} />
  </details>
);
