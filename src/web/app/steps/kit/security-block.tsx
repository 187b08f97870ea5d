import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { cardBoat } from '../../../../papers/cards/card-boat.ts';
import { handOverSteps, type RemoteRow, remoteRows } from '../../../../papers/lists/remote-rows.ts';
import { LitRows, type RowHand } from '../../margin/lit-rows.tsx';
import { useWords } from '../../words/units.ts';
import { words } from './words.ts';

/** A way in point by point: what it reaches, whether it writes, who holds its password. */
const Points = ({ row }: { row: RemoteRow }): ReactNode => {
  const say = useWords();
  return (
    <details className="why">
      <summary>
        {words.pointByPoint}
        <span className="unseen">{words.ofWhat(row.what)}</span>
      </summary>
      {row.points.map(({ what, fact }) => (
        <p key={`${what} ${fact}`}>
          {what}: {say(fact)}.
        </p>
      ))}
    </details>
  );
};

/** The security page: who can reach what by wifi and from ashore, who holds passwords, what to do on handing her over. */
export const SecurityBlock = ({ boat, plan, hand }: { boat: Boat; plan: Plan; hand: RowHand }): ReactNode => {
  const names = useMemo(() => cardBoat(boat), [boat]);
  const rows = useMemo(() => remoteRows(names, plan), [names, plan]);
  const steps = useMemo(() => handOverSteps(names, plan), [names, plan]);
  return (
    <>
      <LitRows
        heading={words.whoReaches}
        rows={rows.map((row) => ({ ...row, control: <Points row={row} /> }))}
        empty={words.noWayIn}
        hand={hand}
      />
      {steps.length === 0 ? null : (
        <section className="block">
          <h2>{words.handOver}</h2>
          <ol>
            {steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
        </section>
      )}
    </>
  );
};
