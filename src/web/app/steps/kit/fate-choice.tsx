import type { ReactNode } from 'react';
import type { Kit } from '../../../../core/boat/boat-schema.ts';
import { useEdit } from '../../edit-context.ts';
import { words } from './fate-words.ts';
import { PhaseChoice } from './phase-choice.tsx';

const fates = ['stays', 'goes', 'comes'] as const;

/** Whether a unit stays, goes or comes, and in which phase; choosing another is an edit. */
export const FateChoice = ({ unit }: { unit: Kit }): ReactNode => {
  const edit = useEdit();
  const phase = unit.phase === undefined ? {} : { phase: unit.phase };
  return (
    <fieldset className="fate-choice">
      <legend className="unseen">{words.becomes(unit.name)}</legend>
      {fates.map((fate) => (
        <button
          key={fate}
          className="fate-button"
          type="button"
          aria-pressed={fate === unit.fate}
          onClick={() => {
            if (fate !== unit.fate) edit([{ edit: 'set-fate', params: { unit: unit.id, fate, ...phase } }]);
          }}
        >
          {words.fate[fate]}
        </button>
      ))}
      {unit.fate === 'stays' ? null : (
        <PhaseChoice
          label={words.inPhase}
          phase={unit.phase ?? 1}
          isLabelSeen
          onPhase={(next) =>
            edit([
              { edit: 'set-fate', params: { unit: unit.id, fate: unit.fate, ...(next === 1 ? {} : { phase: next }) } },
            ])
          }
        />
      )}
    </fieldset>
  );
};
