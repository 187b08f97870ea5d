import { cellText, headOf } from './cell-text.ts';
import { csvText } from './csv.ts';
import type { ListTable } from './list-table.ts';

/** A list as CSV by RFC 4180: one line of heads with their units, then its rows. */
export const tableCsv = ({ columns, rows }: ListTable): string =>
  csvText([columns.map(headOf), ...rows.map((row) => columns.map((column, at) => cellText(column, row[at])))]);
