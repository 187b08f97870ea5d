import type { ListTable } from './list-table.ts';

const longest = 31;

/** The title of a list as the name of its sheet: what a workbook forbids left out, cut to 31 characters, never twice. */
export const sheetName = (table: ListTable, tables: readonly ListTable[]): string => {
  const nameOf = ({ title }: ListTable): string =>
    title
      .replaceAll(/[\\/?*[\]:]/g, ' ')
      .replaceAll(/^'+|'+$/g, '')
      .slice(0, longest)
      .trim();
  const name = nameOf(table);
  const same = tables.filter((other) => nameOf(other).toLowerCase() === name.toLowerCase());
  return same.length < 2 && name !== '' ? name : table.id.slice(0, longest);
};
