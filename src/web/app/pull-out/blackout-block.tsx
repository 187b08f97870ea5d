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
import { words } from './words.ts';

/** Rows shown at once; the others open under them. */
const shown = 10;

const vitalOf = ({ of, perhaps }: BlackoutRow['vitals'][number]): string => {
  const name = vitalNames[of].name.toLowerCase();
  return perhaps ? words.perhapsVital(name) : name;
};

const RowView = ({ row, onPull }: { row: BlackoutRow; onPull: (failure: Failure) => void }): ReactNode => {
  const say = useWords();
  const [first] = row.failures;
  const more = row.what.length > 1 ? words.andMore(row.what.length - 1) : '';
  return (
    <li className="row">
      <button type="button" className="row-button" onClick={() => (first === undefined ? undefined : onPull(first))}>
        {say(`${row.what[0] ?? ''}${more}`)}
        <span className="row-fact">
          {' '}
          {say(row.short === '' ? words.noReading : row.short)}
          {row.vitals.length === 0 ? '' : words.singlePoint(row.vitals.map(vitalOf).join(', '))}
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
  const say = useWords();
  const index = useMemo(() => indexBoat(boat), [boat]);
  const { rows, failures, harmless } = useMemo(() => blackoutRows(index, plan), [index, plan]);
  const vitals = useMemo(() => plan.vitals.map((vital) => vitalWords(index, plan, vital).says), [index, plan]);
  if (plan.blackouts.length === 0 || plan.readings.length === 0) return null;
  const rest = rows.slice(shown);
  return (
    <section className="block blackout-block">
      <h2>{words.oneFailure}</h2>
      <p className="quiet">{words.lookedAt(failures, harmless)}</p>
      <ul className="pull-vitals">
        {vitals.map((says) => (
          <li key={says}>{say(says)}</li>
        ))}
      </ul>
      <ul>
        {rows.slice(0, shown).map((row) => (
          <RowView key={row.key} row={row} onPull={onPull} />
        ))}
      </ul>
      {rest.length === 0 ? null : (
        <details className="known-lengths">
          <summary>{words.others(rest.length)}</summary>
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
