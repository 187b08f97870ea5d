import type { Boat, Kit, Place, Way } from '../../core/boat/boat-schema.ts';
import type { EditCall } from '../../core/boat/history.ts';
import type { BoatTable } from './table-shape.ts';

/** Texts for some cells of a table: of rows that are there by their id, and of new ones below them. */
export interface CellsToPut {
  readonly cells: readonly { readonly row: string; readonly column: string; readonly text: string }[];
  readonly newRows?: readonly Readonly<Record<string, string>>[];
}

/** The edits of all cells together, or what is wrong with some of them: then none is put in. */
export interface PutCells {
  readonly edits: readonly EditCall[];
  readonly wrong: readonly { readonly where: string; readonly says: string }[];
}

/** Stands for a length until the edit itself guesses one. */
const guess = { valueM: 1, how: 'guessed' } as const;

/** A copy of the lists that new rows go into, so that two of one name get ids of their own. */
const growing = (boat: Boat): Boat & { places: Place[]; ways: Way[]; kit: Kit[] } => ({
  ...boat,
  places: [...boat.places],
  ways: [...boat.ways],
  kit: [...boat.kit],
  supply: {
    ...boat.supply,
    banks: [...boat.supply.banks],
    panels: boat.supply.panels.map((panel) => ({ ...panel, circuits: [...panel.circuits] })),
  },
});

const grow = (boat: ReturnType<typeof growing>, edits: readonly EditCall[]): void => {
  for (const { edit, params } of edits) {
    if (edit === 'add-place') boat.places.push(params);
    else if (edit === 'add-unit') boat.kit.push(params);
    else if (edit === 'add-way') boat.ways.push({ ...params, length: guess, kind: 'open', known: 'assumed' });
    else if (edit === 'add-bank') boat.supply.banks.push(params);
    else if (edit === 'add-panel') boat.supply.panels.push(params);
    else if (edit === 'add-circuit')
      boat.supply.panels.find(({ id }) => id === params.panel)?.circuits.push(params.circuit);
  }
};

/** Puts texts into cells of a table, as one step: all of them, or none where one cannot be understood. */
export const putCells = (table: BoatTable, boat: Boat, { cells, newRows = [] }: CellsToPut): PutCells => {
  const edits: EditCall[] = [];
  const wrong: { where: string; says: string }[] = [];
  const rows = new Map(table.rowsOf(boat).map((row) => [row.id, row]));
  const headOf = new Map(table.columns.map(({ id, says }) => [id, says]));
  for (const { row, column, text } of cells) {
    if (rows.get(row)?.cells[column] === text.trim()) continue;
    const put = table.put(boat, { row, column }, text);
    const name = Object.values(rows.get(row)?.cells ?? {})[0] ?? row;
    if ('wrong' in put) wrong.push({ where: `${name}, ${headOf.get(column) ?? column}`, says: put.wrong });
    else edits.push(...put.edits);
  }
  const grown = growing(boat);
  for (const [at, row] of newRows.entries()) {
    if (Object.values(row).every((text) => text.trim() === '')) continue;
    const put = table.add?.(grown, row) ?? { wrong: `There is no row for this in ${table.says}.` };
    if ('wrong' in put) wrong.push({ where: `new row ${at + 1}`, says: put.wrong });
    else {
      edits.push(...put.edits);
      grow(grown, put.edits);
    }
  }
  return wrong.length > 0 ? { edits: [], wrong } : { edits, wrong };
};
