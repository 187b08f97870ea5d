import { useCallback, useMemo, useState } from 'react';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import { type CellsToPut, putCells } from '../../../papers/tables/put-cells.ts';
import type { BoatTable, TableRow } from '../../../papers/tables/table-shape.ts';
import { useEdit } from '../edit-context.ts';
import type { GridPlace, GridRange } from './grid-place.ts';
import { type GridSort, nextSort, shownRows } from './shown-rows.ts';
import { words } from './words.ts';

/** What is wrong with cells that were to be put in. */
export type Wrong = ReturnType<typeof putCells>['wrong'];

/** A table while somebody works in it. */
export interface GridState {
  readonly rows: readonly TableRow[];
  readonly all: number;
  readonly text: string;
  readonly find: (text: string) => void;
  readonly sort: GridSort | undefined;
  readonly sortBy: (column: string) => void;
  /** the cell one is at, and the other corner of what is marked */
  readonly marked: GridRange;
  readonly goTo: (place: GridPlace, isMarking?: boolean) => void;
  /** the text of the cell that is being typed in; undefined while none is */
  readonly typing: string | undefined;
  readonly type: (text: string | undefined) => void;
  /** what was typed in the new row so far, by column */
  readonly fresh: Readonly<Record<string, string>>;
  readonly typeFresh: (cells: Readonly<Record<string, string>>) => void;
  readonly wrong: Wrong;
  /** puts cells in as one step; says what is wrong where one cannot be understood, and then puts none in */
  readonly put: (cells: CellsToPut) => boolean;
}

const first: GridPlace = { row: 0, column: 0 };

/** What the step is called in the line of the last step: one cell says it itself, several are counted. */
const titleOf = (table: BoatTable, { cells, newRows = [] }: CellsToPut): string | undefined => {
  if (newRows.length > 1 || (newRows.length > 0 && cells.length > 0)) return words.added(table.says, newRows.length);
  return cells.length > 1 ? words.changed(table.says, cells.length) : undefined;
};

/** Holds what is shown of a table, which cell one is at, and what is being typed. */
export const useGrid = (table: BoatTable, boat: Boat): GridState => {
  const edit = useEdit();
  const [text, find] = useState('');
  const [sort, setSort] = useState<GridSort | undefined>(undefined);
  const [marked, setMarked] = useState<GridRange>({ from: first, to: first });
  const [typing, type] = useState<string | undefined>(undefined);
  const [fresh, typeFresh] = useState<Readonly<Record<string, string>>>({});
  const [wrong, setWrong] = useState<Wrong>([]);
  const all = useMemo(() => table.rowsOf(boat), [table, boat]);
  const rows = useMemo(() => shownRows(all, text, sort), [all, text, sort]);
  const put = useCallback(
    (cells: CellsToPut): boolean => {
      const made = putCells(table, boat, cells);
      setWrong(made.wrong);
      if (made.edits.length > 0) edit(made.edits, titleOf(table, cells));
      return made.wrong.length === 0;
    },
    [table, boat, edit],
  );
  const goTo = useCallback((place: GridPlace, isMarking = false): void => {
    setMarked((old) => ({ from: isMarking ? old.from : place, to: place }));
  }, []);
  return {
    rows,
    all: all.length,
    text,
    find,
    sort,
    sortBy: (column) => setSort(nextSort(sort, column)),
    marked,
    goTo,
    typing,
    type,
    fresh,
    typeFresh,
    wrong,
    put,
  };
};
