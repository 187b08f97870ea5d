import { type ClipboardEvent, type KeyboardEvent, type ReactNode, useRef } from 'react';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import { cellsOfText, textOfCells } from '../../../papers/tables/cells-of-text.ts';
import type { BoatTable, TableColumn, TableRow } from '../../../papers/tables/table-shape.ts';
import type { LightStore } from '../../drawing/light-store.ts';
import { useEdit } from '../edit-context.ts';
import { useWords } from '../words/units.ts';
import { GridCell } from './grid-cell.tsx';
import { type GridPlace, inOrder, isInRange, placeByKey } from './grid-place.ts';
import { pastedCells } from './pasted-cells.ts';
import type { GridState } from './use-grid.ts';
import { words } from './words.ts';

interface GridProps {
  readonly table: BoatTable;
  readonly boat: Boat;
  readonly lights: LightStore;
  readonly state: GridState;
}

/** A letter, figure or sign that begins to type in a cell. */
const isTyped = ({ key, ctrlKey, metaKey, altKey }: KeyboardEvent): boolean =>
  key.length === 1 && key !== ' ' && !ctrlKey && !metaKey && !altKey;

const Heads = ({ table, state }: Pick<GridProps, 'table' | 'state'>): ReactNode => (
  <thead>
    <tr>
      {table.columns.map(({ id, says, isFigure }) => {
        const isSorted = state.sort?.column === id;
        return (
          <th
            key={id}
            scope="col"
            className={isFigure === true ? 'figure-cell' : undefined}
            aria-sort={isSorted ? (state.sort?.isDown === true ? 'descending' : 'ascending') : 'none'}
          >
            <button type="button" aria-label={words.sortBy(says)} onClick={() => state.sortBy(id)}>
              {says}
              {isSorted ? <span aria-hidden="true">{state.sort?.isDown === true ? ' ↓' : ' ↑'}</span> : null}
            </button>
          </th>
        );
      })}
      {table.remove === undefined ? null : (
        <th scope="col">
          <span className="unseen">{words.rowTools}</span>
        </th>
      )}
    </tr>
  </thead>
);

/** What is done with the cells of one row: gone to, typed in, put in. */
const useRowHand = ({ table, state }: Pick<GridProps, 'table' | 'state'>) => {
  const print = useWords();
  const newRow = state.rows.length;
  const isFixed = (column: TableColumn, row: number): boolean => column.isFixed === true && row < newRow;
  const textAt = ({ row, column }: GridPlace): string => {
    const id = table.columns[column]?.id ?? '';
    return row === newRow ? (state.fresh[id] ?? '') : print(state.rows[row]?.cells[id] ?? '');
  };
  const startTyping = (place: GridPlace, text: string): void => {
    const column = table.columns[place.column];
    if (column !== undefined && !isFixed(column, place.row)) state.type(text);
  };
  const putFresh = (cells: Readonly<Record<string, string>>): void => {
    if (Object.values(cells).every((text) => text.trim() === '')) return;
    if (state.put({ cells: [], newRows: [cells] })) state.typeFresh({});
  };
  const finish = (at: GridPlace, key: string | undefined): void => {
    const [typed, column, row] = [state.typing, table.columns[at.column], state.rows[at.row]];
    state.type(undefined);
    if (key === 'Escape' || typed === undefined || column === undefined) return;
    const isNew = at.row === newRow;
    const fresh = { ...state.fresh, [column.id]: typed };
    if (isNew) state.typeFresh(fresh);
    else if (row !== undefined && typed !== textAt(at))
      state.put({ cells: [{ row: row.id, column: column.id, text: typed }] });
    if (isNew && key === 'Enter') putFresh(fresh);
    const side = key === 'Tab' ? 1 : key === 'BackTab' ? -1 : 0;
    const down = key === 'Enter' && !isNew ? 1 : 0;
    state.goTo({
      row: Math.min(at.row + down, table.add === undefined ? newRow - 1 : newRow),
      column: Math.max(0, Math.min(table.columns.length - 1, at.column + side)),
    });
  };
  return { isFixed, textAt, startTyping, finish, putFresh, newRow };
};

/** The cells of a table to type in: one row a thing, the last one new. Keys, copy and paste as in a spreadsheet. */
export const Grid = ({ table, boat, lights, state }: GridProps): ReactNode => {
  const edit = useEdit();
  const grid = useRef<HTMLTableElement>(null);
  const { rows, marked, typing, goTo } = state;
  const here = marked.to;
  const { isFixed, textAt, startTyping, finish, putFresh, newRow } = useRowHand({ table, state });
  const size = { rows: rows.length + (table.add === undefined ? 0 : 1), columns: table.columns.length };

  const onKeyDown = (event: KeyboardEvent): void => {
    if (typing !== undefined) return;
    const next = placeByKey(here, event, size);
    if (next !== undefined) goTo(next, event.shiftKey);
    else if (event.key === 'Enter' || event.key === 'F2') startTyping(here, textAt(here));
    else if (event.key === 'Delete' || event.key === 'Backspace') fill('');
    else if (isTyped(event)) startTyping(here, event.key);
    else return;
    event.preventDefault();
  };
  const fill = (text: string): void => {
    state.put(pastedCells(table, { rows, marked, pasted: [[text]] }));
  };
  const onCopy = (event: ClipboardEvent): void => {
    if (typing !== undefined) return;
    const { from, to } = inOrder(marked);
    const texts = rows
      .slice(from.row, to.row + 1)
      .map(({ cells }) => table.columns.slice(from.column, to.column + 1).map(({ id }) => cells[id] ?? ''));
    event.clipboardData.setData('text/plain', textOfCells(texts));
    event.preventDefault();
  };
  const onPaste = (event: ClipboardEvent): void => {
    if (typing !== undefined) return;
    state.put(pastedCells(table, { rows, marked, pasted: cellsOfText(event.clipboardData.getData('text/plain')) }));
    event.preventDefault();
  };
  const takeOut = ({ id }: TableRow): void => {
    const out = table.remove?.(boat, id);
    if (out !== undefined && 'edits' in out) edit(out.edits);
  };
  const cellAt = (column: TableColumn, place: GridPlace, name: string): ReactNode => (
    <GridCell
      key={column.id}
      column={column}
      label={place.row === newRow ? words.newCell(column.says) : `${name}, ${column.says}`}
      text={textAt(place)}
      typing={typing !== undefined && here.row === place.row && here.column === place.column ? typing : undefined}
      isHere={here.row === place.row && here.column === place.column}
      isMarked={isInRange(marked, place)}
      isFixed={isFixed(column, place.row)}
      onPoint={({ isMarking, isTwice }) => {
        goTo(place, isMarking);
        if (isTwice && !isMarking && typing === undefined) startTyping(place, textAt(place));
      }}
      onType={state.type}
      onDone={(key) => finish(place, key)}
    />
  );
  return (
    <table
      ref={grid}
      // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: its cells are gone to and typed in
      role="grid"
      className="grid-table"
      aria-label={table.says}
      aria-multiselectable="true"
      onKeyDown={onKeyDown}
      onCopy={onCopy}
      onPaste={onPaste}
    >
      <Heads table={table} state={state} />
      <tbody>
        {rows.map((row, r) => {
          const name = Object.values(row.cells)[0] ?? row.id;
          return (
            <tr key={row.id} onPointerEnter={() => lights.rest([row.id])} onPointerLeave={() => lights.rest([])}>
              {table.columns.map((column, c) => cellAt(column, { row: r, column: c }, name))}
              {table.remove === undefined ? null : (
                <td className="grid-tools">
                  <button type="button" aria-label={words.takeOutOf(name)} onClick={() => takeOut(row)}>
                    {words.takeOut}
                  </button>
                </td>
              )}
            </tr>
          );
        })}
        {table.add === undefined ? null : (
          <tr className="new-row">
            {table.columns.map((column, c) => cellAt(column, { row: newRow, column: c }, words.newRow))}
            {table.remove === undefined ? null : (
              <td className="grid-tools">
                <button type="button" onClick={() => putFresh(state.fresh)}>
                  {words.putIn}
                </button>
              </td>
            )}
          </tr>
        )}
      </tbody>
    </table>
  );
};
