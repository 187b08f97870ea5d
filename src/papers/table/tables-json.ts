import type { ListCell, ListTable } from './list-table.ts';

const rowOf = ({ columns }: ListTable, row: readonly ListCell[]): Record<string, ListCell> =>
  Object.fromEntries(columns.flatMap(({ id }, at) => (row[at] === undefined ? [] : [[id, row[at]]])));

/**
 * All lists as one JSON text: by the id of the list its title, its columns with their units, and its rows by the ids of the
 * columns; a cell with nothing in it is left out.
 */
export const tablesJson = (tables: readonly ListTable[]): string =>
  `${JSON.stringify(
    Object.fromEntries(
      tables.map((table) => [
        table.id,
        {
          title: table.title,
          columns: table.columns.map(({ id, head, unit }) => ({ id, head, ...(unit === undefined ? {} : { unit }) })),
          rows: table.rows.map((row) => rowOf(table, row)),
        },
      ]),
    ),
    undefined,
    2,
  )}\n`;
