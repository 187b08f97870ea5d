import { type ReactNode, useMemo } from 'react';
import type { Failure } from '../../../core/blackouts-shape.ts';
import { indexBoat } from '../../../core/boat/boat-index.ts';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { type BlackoutRow, blackoutRows } from '../../../papers/lists/blackout-rows.ts';
import { vitalNames, vitalWords } from '../../../papers/lists/vital-words.ts';
import { useWords } from '../words/units.ts';
import { WordsHere } from '../words/words-here.tsx';
import './pull-out.css';

/** Rows shown at once; the others open under them. */
const shown = 10;

const RowView = ({ row, onPull }: { row: BlackoutRow; onPull: (failure: Failure) => void }): ReactNode => {
  const words = useWords();
  const [first] = row.failures;
  const more = row.what.length > 1 ? ` and ${row.what.length - 1} more` : '';
  return (
    <li className="row">
      <button type="button" className="row-button" onClick={() => (first === undefined ? undefined : onPull(first))}>
        {words(`${row.what[0] ?? ''}${more}`)}
        <span className="row-fact">
          {' '}
          {words(row.short === '' ? 'no reading' : row.short)}
          {row.vitals.length === 0
            ? ''
            : `; single point: ${row.vitals.map(({ of, perhaps }) => `${vitalNames[of].name.toLowerCase()}${perhaps ? ' perhaps' : ''}`).join(', ')}`}
        </span>
      </button>
    </li>
  );
};

/** What every single failure takes, the worst first; a press pulls it out. */
export const BlackoutBlock = ({
  boat,
  plan,
  onPull,
}: {
  boat: Boat;
  plan: Plan;
  onPull: (failure: Failure) => void;
}): ReactNode => {
  const words = useWords();
  const index = useMemo(() => indexBoat(boat), [boat]);
  const { rows, failures, harmless } = useMemo(() => blackoutRows(index, plan), [index, plan]);
  const vitals = useMemo(() => plan.vitals.map((vital) => vitalWords(index, plan, vital).says), [index, plan]);
  if (plan.blackouts.length === 0 || plan.readings.length === 0) return null;
  const rest = rows.slice(shown);
  return (
    <section className="block blackout-block">
      <h2>What one failure takes</h2>
      <p className="quiet">
        {failures} looked at, each alone; {harmless} take nothing off any screen.
      </p>
      <ul className="pull-vitals">
        {vitals.map((says) => (
          <li key={says}>{words(says)}</li>
        ))}
      </ul>
      <ul>
        {rows.slice(0, shown).map((row) => (
          <RowView key={row.key} row={row} onPull={onPull} />
        ))}
      </ul>
      {rest.length === 0 ? null : (
        <details className="known-lengths">
          <summary>The others ({rest.length})</summary>
          <ul>
            {rest.map((row) => (
              <RowView key={row.key} row={row} onPull={onPull} />
            ))}
          </ul>
        </details>
      )}
      <WordsHere texts={vitals} names={[]} />
    </section>
  );
};
