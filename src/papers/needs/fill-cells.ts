import type { EditCall } from '../../core/boat/history.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import type { NeedsCell, NeedsRow } from './needs-matrix.ts';

/** What somebody asks of a cell. */
export type Ask = 'must' | 'wish' | 'none';

/** What a cell asks now. */
export const askOf = ({ need }: NeedsCell): Ask => (need === undefined ? 'none' : need.must ? 'must' : 'wish');

const next = { none: 'must', must: 'wish', wish: 'none' } as const;

/** What a cell asks for when it is pressed once more: nothing, a must, a wish, and round again. */
export const nextAsk = (cell: NeedsCell): Ask => next[askOf(cell)];

/** One cell of a matrix with the row it stands in. */
export interface CellAt {
  readonly row: Pick<NeedsRow, 'reading' | 'instance'>;
  readonly cell: NeedsCell;
}

const callFor = ({ row, cell }: CellAt, ask: Ask): EditCall[] => {
  const { reading, instance } = row;
  const which = { reading, ...(instance === undefined ? {} : { instance }), at: cell.unit };
  if (askOf(cell) === ask) return [];
  if (ask === 'none') return [{ edit: 'remove-need', params: which }];
  const must = ask === 'must';
  return cell.need === undefined
    ? [{ edit: 'add-need', params: { ...which, must } }]
    : [{ edit: 'change-need', params: { ...cell.need, must } }];
};

const askWords = { must: 'must be seen', wish: 'had better be seen', none: 'no longer wanted' } as const;

/** The edits that make all the cells ask for one thing, as one step with its sentence; no edits where they ask for it already. */
export const fillCells = (
  cells: readonly CellAt[],
  ask: Ask,
): { readonly edits: EditCall[]; readonly says: string } => {
  const [first] = cells;
  const what = first === undefined ? '' : readingName(first.row);
  const isOneRow = cells.every(({ row }) => readingName(row) === what);
  const subject = isOneRow ? what : 'several readings';
  const where = cells.length === 1 ? '' : ` at ${cells.length} places`;
  const says = `${subject.charAt(0).toUpperCase()}${subject.slice(1)} ${askWords[ask]}${where}.`;
  return { edits: cells.flatMap((cell) => callFor(cell, ask)), says };
};
