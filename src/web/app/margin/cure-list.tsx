import type { ReactNode } from 'react';
import type { EditCall } from '../../../core/boat/history.ts';
import type { Cure } from '../../../core/plan-shape.ts';
import { cureCostWords } from '../../../papers/lists/cure-words.ts';
import { useEdit } from '../edit-context.ts';
import { Explained } from '../words/explained.tsx';
import { useWords } from '../words/units.ts';
import { words } from './words.ts';

// reason: a plan names edits by their ids, and the worker checks id and parameters before it makes them
const callsOf = ({ edits }: Cure): readonly EditCall[] => edits as unknown as readonly EditCall[];

/** What would close a gap: a cure with edits is a link that makes them as one step, one without is a thing to look up. */
export const CureList = ({ cures, currency }: { cures: readonly Cure[]; currency: string }): ReactNode => {
  const edit = useEdit();
  const say = useWords();
  const priceOf = (cure: Cure): string => cureCostWords(cure, currency);
  return (
    <ul className="cures" aria-label={words.cures}>
      {cures.map((cure) => (
        <li key={cure.says}>
          {cure.edits.length === 0 ? (
            <Explained text={cure.says} />
          ) : (
            <button type="button" className="cure-link" onClick={() => edit(callsOf(cure), cure.says)}>
              {say(cure.says)}
            </button>
          )}{' '}
          {priceOf(cure) === '' ? null : <span className="cure-cost">({say(priceOf(cure))})</span>}
        </li>
      ))}
    </ul>
  );
};
