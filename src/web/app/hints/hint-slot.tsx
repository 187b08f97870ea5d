import type { ReactNode } from 'react';
import type { StepId } from '../route.ts';
import './hint-slot.css';
import { type HintPlace, hintAt, putAllHintsAway, putHintAway, useGoneHints } from './hint-store.ts';
import { words } from './words.ts';

/** Where hints of one place of the page stand: the one that is given now, or nothing. A paper slip with a line to its thing. */
export const HintSlot = ({ place, step }: { place: HintPlace; step: StepId }): ReactNode => {
  const hint = hintAt(step, useGoneHints());
  if (hint?.place !== place) return null;
  return (
    <section className={`hint hint-${place}`} aria-label={words.hint}>
      <span className="hint-line" aria-hidden="true" />
      <p>{words.says[hint.id]}</p>
      <p className="hint-presses">
        <button
          type="button"
          aria-label={words.putAwayThis}
          onClick={() => putHintAway(hint.id)}
          onKeyDown={({ key }) => {
            if (key === 'Escape') putHintAway(hint.id);
          }}
        >
          {words.putAway}
        </button>
        <button type="button" onClick={putAllHintsAway}>
          {words.none}
        </button>
      </p>
    </section>
  );
};
