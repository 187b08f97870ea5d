import type { ListCell, ListColumn } from './list-table.ts';

/** The head of a column with its unit: "length m". */
export const headOf = ({ head, unit }: ListColumn): string => (unit === undefined ? head : `${head} ${unit}`);

/** A cell as text: a figure with the digits of its column, without its unit, which the head says. */
export const cellText = ({ digits }: ListColumn, cell: ListCell): string => {
  if (cell === undefined) return '';
  if (typeof cell === 'string') return cell;
  return digits === undefined ? String(Number(cell.toFixed(2))) : cell.toFixed(digits);
};
