import type { ReactNode } from 'react';
import type { TeeOfUnit } from '../../../papers/cards/tees-of-unit.ts';
import { useEdit } from '../edit-context.ts';
import { useExplained } from '../words/explained.tsx';
import { words } from './words.ts';

const Tee = ({ tee }: { tee: TeeOfUnit }): ReactNode => {
  const edit = useEdit();
  const [says, ...others] = useExplained([tee.says, ...tee.moves.map((move) => move.says)]);
  const { settled } = tee;
  return (
    <>
      <p>{says}</p>
      {tee.moves.map((move, at) => (
        <p key={move.place}>
          {others[at]}{' '}
          <button type="button" className="press-link" onClick={() => edit(move.edits, move.title)}>
            {words.moveThere}
            <span className="unseen">{words.toPlace(move.place)}</span>
          </button>
        </p>
      ))}
      {settled === undefined ? null : (
        <p>
          {words.settled}{' '}
          <button
            type="button"
            className="press-link"
            onClick={() => edit([{ edit: 'unpin-layout', params: { bus: settled } }])}
          >
            {words.layOutAgain}
          </button>
        </p>
      )}
    </>
  );
};

/** Why the tees of a unit stand where they do, and where else each may go: a press settles it there. */
export const TeesView = ({ tees }: { tees: readonly TeeOfUnit[] }): ReactNode =>
  tees.map((tee) => <Tee key={tee.port} tee={tee} />);
