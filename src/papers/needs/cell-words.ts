import { printCount } from '../lists/print-figure.ts';
import type { NeedsCell } from './needs-matrix.ts';

/** How a cell stands, in one word: what a glyph is chosen by, and what a screen reader says first. */
export type CellState = 'not-wanted' | 'arrives' | 'missing' | 'later';

/** How a cell stands. What is wanted at a unit that is not aboard in the phase planned comes later. */
export const cellState = ({ need, entry }: NeedsCell): CellState => {
  if (need === undefined) return 'not-wanted';
  if (entry === undefined) return 'later';
  return entry.arrives ? 'arrives' : 'missing';
};

/** What the refit changes at a cell; nothing where all is as it was. */
export const cellChange = (cell: NeedsCell): 'new' | 'lost' | 'was' | undefined => {
  const state = cellState(cell);
  if (state === 'arrives') return cell.seenBefore ? undefined : 'new';
  if (!cell.seenBefore) return undefined;
  return state === 'missing' ? 'lost' : 'was';
};

const stateWords = {
  'not-wanted': 'not wanted',
  arrives: 'arrives',
  missing: 'does not arrive',
  later: 'wanted, its unit is not aboard in this phase',
} as const;

const changeWords = {
  new: 'new with the refit',
  lost: 'was here before the refit',
  was: 'was here before the refit',
} as const;

/** A cell in words: "must arrive, arrives, new with the refit, 1 backup". */
export const cellWords = (cell: NeedsCell): string => {
  const change = cellChange(cell);
  const backups = cell.entry?.backups.length ?? 0;
  return [
    ...(cell.need === undefined ? [] : [cell.need.must ? 'a must' : 'a wish']),
    stateWords[cellState(cell)],
    ...(change === undefined ? [] : [changeWords[change]]),
    ...(backups === 0 ? [] : [printCount(backups, 'backup')]),
  ].join(', ');
};
