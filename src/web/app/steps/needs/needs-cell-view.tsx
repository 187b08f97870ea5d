import type { KeyboardEventHandler, ReactNode } from 'react';
import { cellChange, cellState, cellWords } from '../../../../papers/needs/cell-words.ts';
import { nextAsk } from '../../../../papers/needs/fill-cells.ts';
import type { NeedsCell } from '../../../../papers/needs/needs-matrix.ts';
import type { CellPainting } from './use-cell-painting.ts';

const glyphs = { 'not-wanted': '', arrives: '✓', missing: '×', later: '…' } as const;

/** One cell: a mark for how it stands, a ring around what is a must, and a word for what the refit changes. */
export const NeedsCellView = ({
  cell,
  id,
  isStop,
  about,
  painting,
  onFill,
  onRest,
  onKeyDown,
}: {
  cell: NeedsCell;
  id: string;
  /** whether the Tab key stops here */
  isStop: boolean;
  /** row and column in words, for those who hear the table */
  about: string;
  painting: CellPainting;
  onFill: () => void;
  onRest: () => void;
  onKeyDown: KeyboardEventHandler;
}): ReactNode => {
  const state = cellState(cell);
  const change = cellChange(cell);
  const isPainted = painting.painted.has(id);
  return (
    <td className={`need-cell ${state}${isPainted ? ' painted' : ''}`}>
      <button
        type="button"
        data-cell={id}
        tabIndex={isStop ? 0 : -1}
        aria-label={`${about}: ${cellWords(cell)}`}
        onPointerDown={(event) => painting.onPointerDown(event, id, nextAsk(cell))}
        onPointerEnter={() => painting.onPointerEnter(id)}
        onClick={() => {
          if (!painting.endsPainting()) onFill();
        }}
        onFocus={onRest}
        onKeyDown={onKeyDown}
      >
        <span className={cell.need?.must === true ? 'need-mark must' : 'need-mark'} aria-hidden="true">
          {glyphs[state]}
        </span>
        <span className="need-change" aria-hidden="true">
          {change ?? ''}
        </span>
      </button>
    </td>
  );
};
