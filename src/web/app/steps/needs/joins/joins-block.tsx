import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { EditCall } from '../../../../../core/boat/history.ts';
import type { Plan } from '../../../../../core/plan-shape.ts';
import { type ProposalRow, proposalRows, proposalSays } from '../../../../../papers/lists/proposal-rows.ts';
import { wiringRows } from '../../../../../papers/lists/wiring-rows.ts';
import { useEdit } from '../../../edit-context.ts';
import { LitRows, type RowHand } from '../../../margin/lit-rows.tsx';
import { Explained } from '../../../words/explained.tsx';
import { useWords } from '../../../words/units.ts';
import './joins-block.css';
import { type Comparison, useWirings } from './use-wirings.ts';

// reason: a plan names edits by their ids, and the worker checks id and parameters before it makes them
const callsOf = (edits: ProposalRow['edits']): readonly EditCall[] => edits as unknown as readonly EditCall[];

const JoinButtons = ({ row }: { row: ProposalRow }): ReactNode => {
  const edit = useEdit();
  return (
    <span className="join-buttons">
      <button type="button" className="press-link" onClick={() => edit(callsOf(row.edits), `${row.says}.`)}>
        take it into the file
      </button>{' '}
      <button type="button" className="press-link" onClick={() => edit(callsOf(row.forbids), `Not so: ${row.says}.`)}>
        never this
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
        heading="Joins the plan proposes"
        rows={rows.map((row) => ({
          key: row.join,
          what: row.says,
          fact: row.cost,
          lights: lightsOf(row.join),
          control: <JoinButtons row={row} />,
        }))}
        empty="None would help with the ports that are free."
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
                'Take all proposed joins into the file.',
              )
            }
          >
            take all of them into the file
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
      return `${wirings.length} of ${count ?? '…'} ways compared.`;
    case 'done':
      return wirings.length === 0 ? 'No old unit stays that something could replace: there is nothing to compare.' : '';
    case 'stopped':
      return `Stopped after ${wirings.length} of ${count ?? '…'}.`;
    case 'failed':
      return 'The comparison broke down; the boat and her plan are as they were.';
  }
};

const Wirings = ({ boat }: { boat: Boat }): ReactNode => {
  const words = useWords();
  const { found, start, stop } = useWirings(boat);
  const rows = useMemo(() => wiringRows(boat, found?.wirings ?? []), [boat, found]);
  return (
    <section className="block joins-block" aria-label="Old kit: kept or replaced">
      <h3>Old kit: kept or replaced</h3>
      <p className="quiet">
        What it comes to when old units stay behind converters and when others take their place: units, cable and tees,
        each way wired at least cost.
      </p>
      <p>
        {found?.state === 'running' ? (
          <button type="button" className="press-link" onClick={stop}>
            stop comparing
          </button>
        ) : (
          <button type="button" className="press-link" onClick={start}>
            {found === undefined ? 'compare them' : 'compare again'}
          </button>
        )}{' '}
        <span role="status">{found === undefined ? '' : stateWords(found)}</span>
      </p>
      <ol className="wirings">
        {rows.map(({ id, says, cost, proof, loses }) => (
          <li key={id}>
            <strong>{cost}</strong> <span className="row-fact">{proof}</span>
            <br />
            {words(says)} {words(loses)}
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
