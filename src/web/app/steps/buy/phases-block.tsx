import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { cardBoat } from '../../../../papers/cards/card-boat.ts';
import { currencyOf } from '../../../../papers/lists/cure-words.ts';
import { type PhaseRow, phaseRows } from '../../../../papers/lists/phase-rows.ts';
import { CureList } from '../../margin/cure-list.tsx';
import { LitRows, type RowHand } from '../../margin/lit-rows.tsx';
import './phases-block.css';
import { useWords } from '../../words/units.ts';
import { words } from './words.ts';

interface BlockProps {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly hand: RowHand;
}

interface FoldProps {
  readonly title: string;
  readonly rows: readonly PhaseRow[];
  readonly hand: RowHand;
}

const Fold = ({ title, rows, hand }: FoldProps): ReactNode => {
  const say = useWords();
  return rows.length === 0 ? null : (
    <details className="phases-fold">
      <summary>{say(title)}</summary>
      <LitRows heading={title} rows={rows} empty="" hand={hand} />
    </details>
  );
};

/** She after each phase: what arrives, what each bus and feed carries, what is bought; then what phasing costs and what to provide early. */
export const PhasesBlock = ({ boat, plan, hand }: BlockProps): ReactNode => {
  const say = useWords();
  const currency = currencyOf(boat);
  const rows = useMemo(() => phaseRows(cardBoat(boat), plan, currency), [boat, plan, currency]);
  if (rows === undefined) return null;
  const { phases, costs, more, cures, provide } = rows;
  return (
    <section className="block phases-block">
      <h2>{words.phases}</h2>
      {phases.map(({ phase, says, rows: own }) => (
        <Fold key={phase} title={words.phase(phase, says)} rows={own} hand={hand} />
      ))}
      <p>{say(costs)}</p>
      {cures.length === 0 ? null : <CureList cures={cures} currency={currency} />}
      <Fold title={words.becauseOfPhases} rows={more} hand={hand} />
      <Fold title={words.toProvide(provide.length)} rows={provide} hand={hand} />
    </section>
  );
};
