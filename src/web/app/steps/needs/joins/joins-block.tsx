import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { EditCall } from '../../../../../core/boat/history.ts';
import type { Plan } from '../../../../../core/plan-shape.ts';
import { type ProposalRow, proposalRows, proposalSays } from '../../../../../papers/lists/proposal-rows.ts';
import { wiringRows } from '../../../../../papers/lists/wiring-rows.ts';
import { useCommands } from '../../../commands/use-commands.ts';
import { useEdit } from '../../../edit-context.ts';
import { LitRows, type RowHand } from '../../../margin/lit-rows.tsx';
import { Explained } from '../../../words/explained.tsx';
import { useWords } from '../../../words/units.ts';
import './joins-block.css';
import { type Comparison, useWirings } from './use-wirings.ts';
import { words } from './words.ts';

// reason: a plan names edits by their ids, and the worker checks id and parameters before it makes them
const callsOf = (edits: ProposalRow['edits']): readonly EditCall[] => edits as unknown as readonly EditCall[];

const JoinButtons = ({ row }: { row: ProposalRow }): ReactNode => {
  const edit = useEdit();
  return (
    <span className="join-buttons">
      <button type="button" className="press-link" onClick={() => edit(callsOf(row.edits), words.joined(row.says))}>
        {words.takeIn}
      </button>{' '}
      <button type="button" className="press-link" onClick={() => edit(callsOf(row.forbids), words.notSo(row.says))}>
        {words.neverThis}
      </button>
    </span>
  );
};

const Proposal = ({ boat, plan, hand }: { boat: Boat; plan: Plan; hand: RowHand }): ReactNode => {
  const edit = useEdit();
  const { proposal } = plan;
  const rows = useMemo(() => proposalRows(boat, plan), [boat, plan]);
  if (proposal === undefined) return null;
  const lightsOf = (join: string): string[] =>
    plan.joins.find(({ id }) => id === join)?.members.map(({ kit }) => kit) ?? [];
  return (
    <section className="joins-block">
      <LitRows
        heading={words.proposed}
        rows={rows.map((row) => ({
          key: row.join,
          what: row.says,
          fact: row.cost,
          lights: lightsOf(row.join),
          control: <JoinButtons row={row} />,
        }))}
        empty={words.noneProposed}
        hand={hand}
      />
      {rows.length === 0 ? null : (
        <p className="block">
          {proposalSays(boat, proposal)}{' '}
          <button
            type="button"
            className="press-link"
            onClick={() =>
              edit(
                rows.flatMap((row) => callsOf(row.edits)),
                words.allTaken,
              )
            }
          >
            {words.takeAll}
          </button>
        </p>
      )}
      {proposal.clashes.map(({ says }) => (
        <p key={says} className="block">
          <Explained text={says} />
        </p>
      ))}
    </section>
  );
};

const stateWords = ({ state, wirings, count }: Comparison): string => {
  switch (state) {
    case 'running':
      return words.compared(wirings.length, `${count ?? '…'}`);
    case 'done':
      return wirings.length === 0 ? words.nothingToCompare : '';
    case 'stopped':
      return words.stopped(wirings.length, `${count ?? '…'}`);
    case 'failed':
      return words.failed;
  }
};

const Wirings = ({ boat }: { boat: Boat }): ReactNode => {
  const say = useWords();
  const { found, start, stop } = useWirings(boat);
  const rows = useMemo(() => wiringRows(boat, found?.wirings ?? []), [boat, found]);
  useCommands(
    // biome-ignore lint/correctness/useExhaustiveDependencies: what is asked hangs on the boat alone
    useMemo(
      () => [
        { id: 'compare-wirings', group: 'boat', says: words.compareOld, foundBy: words.compareFoundBy, run: start },
      ],
      [boat],
    ),
  );
  return (
    <section className="block joins-block" aria-label={words.oldKit}>
      <h3>{words.oldKit}</h3>
      <p className="quiet">{words.oldKitSays}</p>
      <p>
        {found?.state === 'running' ? (
          <button type="button" className="press-link" onClick={stop}>
            {words.stop}
          </button>
        ) : (
          <button type="button" className="press-link" onClick={start}>
            {found === undefined ? words.compare : words.compareAgain}
          </button>
        )}{' '}
        <span role="status">{found === undefined ? '' : stateWords(found)}</span>
      </p>
      <ol className="wirings">
        {rows.map(({ id, says, cost, proof, loses }) => (
          <li key={id}>
            <strong>{cost}</strong> <span className="row-fact">{proof}</span>
            <br />
            {say(says)} {say(loses)}
          </li>
        ))}
      </ol>
    </section>
  );
};

/** Joins that the file does not say, and what keeping old kit comes to beside replacing it. */
export const JoinsBlock = ({ boat, plan, hand }: { boat: Boat; plan: Plan; hand: RowHand }): ReactNode => (
  <>
    <Proposal boat={boat} plan={plan} hand={hand} />
    <Wirings boat={boat} />
  </>
);
