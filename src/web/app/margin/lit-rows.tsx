import type { ReactNode } from 'react';
import { type LightStore, useIsLit } from '../../drawing/light-store.ts';
import type { CardChoice } from '../cards/card-choice.ts';
import { useWords } from '../words/units.ts';
import { WordsHere } from '../words/words-here.tsx';

/** One line of a block in the margin; `lights` are the ids it lights on the drawing. */
export interface Row {
  readonly key: string;
  readonly what: string;
  readonly fact?: string;
  readonly lights: readonly string[];
  /** the card that speaks of it */
  readonly card?: CardChoice;
  /** what can be changed here */
  readonly control?: ReactNode;
}

/** What a block needs to light the drawing and to take it somewhere. */
export interface RowHand {
  readonly lights: LightStore;
  readonly onShow: (ids: readonly string[], card?: CardChoice) => void;
}

const RowView = ({ row, hand }: { row: Row; hand: RowHand }): ReactNode => {
  const words = useWords();
  const lit = useIsLit(hand.lights, row.lights);
  return (
    <li
      className={lit ? 'row lit' : 'row'}
      onPointerEnter={() => hand.lights.rest(row.lights)}
      onPointerLeave={() => hand.lights.rest([])}
    >
      <button
        type="button"
        className="row-button"
        onClick={() => hand.onShow(row.lights, row.card)}
        onFocus={() => hand.lights.rest(row.lights)}
        onBlur={() => hand.lights.rest([])}
      >
        {words(row.what)}
        {row.fact === undefined ? null : <span className="row-fact"> {words(row.fact)}</span>}
      </button>
      {row.control}
    </li>
  );
};

/** A headed list of lines that light the drawing; `empty` is said where there are none. */
export const LitRows = ({
  heading,
  rows,
  empty,
  hand,
}: {
  heading: string;
  rows: readonly Row[];
  empty: string;
  hand: RowHand;
}): ReactNode => (
  <section className="block">
    <h2>{heading}</h2>
    {rows.length === 0 ? (
      <p className="quiet">{empty}</p>
    ) : (
      <>
        <ul>
          {rows.map((row) => (
            <RowView key={row.key} row={row} hand={hand} />
          ))}
        </ul>
        <WordsHere texts={[heading]} names={rows.flatMap(({ what, fact = '' }) => [what, fact])} />
      </>
    )}
  </section>
);
