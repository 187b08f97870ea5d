import { type ReactNode, useEffect, useState } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { Opening } from '../../../../../core/boat/opening.ts';
import { sameValue } from '../../../../../core/boat/same-value.ts';
import { useEdit } from '../../../edit-context.ts';
import { putOpening, stillWanted } from './opening-draft.ts';
import { HoleFields, MoreFields, NameFields, PanelFields } from './opening-fields.tsx';
import { TraceForm } from './trace-form.tsx';
import { words } from './words.ts';

/** Fills in one opening, new or known; nothing is changed before "done", and that is one step. */
export const OpeningEditor = ({
  boat,
  opening,
  onClose,
}: {
  boat: Boat;
  opening: Opening;
  onClose: () => void;
}): ReactNode => {
  const edit = useEdit();
  const [draft, setDraft] = useState(opening);
  const [sent, setSent] = useState<Opening | undefined>(undefined);
  const [isTracing, setIsTracing] = useState(false);
  // an opening that was refused is still here to be put right
  useEffect(() => {
    if (sent !== undefined && boat.openings?.some((one) => sameValue(one, sent)) === true) onClose();
  }, [boat, sent, onClose]);
  const wanted = stillWanted(draft);
  return (
    <section
      className="part-form opening-editor"
      aria-label={opening.id === '' ? words.newOne : words.editing(opening.name)}
    >
      <h3>{opening.id === '' ? words.newOne : words.editing(opening.name)}</h3>
      <NameFields boat={boat} opening={draft} onOpening={setDraft} />
      <HoleFields opening={draft} onOpening={setDraft}>
        <button type="button" className="press-link" aria-expanded={isTracing} onClick={() => setIsTracing(!isTracing)}>
          {draft.traced === undefined ? words.trace : words.traceAgain}
        </button>
        {isTracing ? (
          <TraceForm
            traced={draft.traced}
            onTraced={(traced) => {
              setDraft({ ...draft, ...traced });
              setIsTracing(false);
            }}
          />
        ) : null}
      </HoleFields>
      <PanelFields opening={draft} onOpening={setDraft} />
      <MoreFields opening={draft} onOpening={setDraft} />
      {wanted.length === 0 ? null : <p className="quiet">{words.missing(wanted)}</p>}
      <p className="opening-presses">
        <button
          type="button"
          className="press-link"
          disabled={wanted.length > 0}
          onClick={() => {
            const put = putOpening(boat, draft);
            setSent(put);
            edit([{ edit: 'set-opening', params: put }]);
          }}
        >
          {words.done}
        </button>
        <button type="button" className="press-link" onClick={onClose}>
          {words.leave}
        </button>
      </p>
    </section>
  );
};
