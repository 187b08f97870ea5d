import { type ReactNode, useMemo, useState } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { weakPassPhrase } from '../../../../core/remote/weak-pass-phrase.ts';
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

/** A pass phrase looked at while it is typed; nothing of it is kept or sent. */
const TryPhrase = ({ boat }: { boat: Boat }): ReactNode => {
  const [phrase, setPhrase] = useState('');
  const known = [boat.name, ...boat.kit.flatMap(({ aboard }) => aboard?.serial ?? [])];
  const weak = phrase === '' ? undefined : weakPassPhrase({ phrase, known });
  return (
    <details className="why">
      <summary>{words.tryPhrase}</summary>
      <label>
        {words.phrase}
        <input
          type="text"
          autoComplete="off"
          spellCheck={false}
          value={phrase}
          onChange={({ target }) => setPhrase(target.value)}
        />
      </label>
      <p role="status">{phrase === '' ? words.phraseKept : words.phraseIs[weak ?? 'strong']}</p>
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
      {rows.length === 0 ? null : (
        <div className="block">
          <TryPhrase boat={boat} />
        </div>
      )}
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
