import { type KeyboardEvent, type ReactNode, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { breakLights } from '../../../../papers/cards/break-lights.ts';
import { type CardBoat, cardBoat } from '../../../../papers/cards/card-boat.ts';
import { wayLights } from '../../../../papers/cards/way-lights.ts';
import { type Ask, type CellAt, fillCells, nextAsk } from '../../../../papers/needs/fill-cells.ts';
import { byTrade, type NeedsColumn, type NeedsRow, needsMatrix } from '../../../../papers/needs/needs-matrix.ts';
import type { LightStore } from '../../../drawing/light-store.ts';
import { useEdit } from '../../edit-context.ts';
import { NeedsCellView } from './needs-cell-view.tsx';
import { NeedsDetail } from './needs-detail.tsx';
import { type CellPlace, nextCell } from './next-cell.ts';
import { useCellPainting } from './use-cell-painting.ts';
import './needs-table.css';
import { words } from './words.ts';

const idOf = ({ key }: NeedsRow, { unit }: NeedsColumn): string => `${key}/${unit}`;

/** Keys that say at once what a cell is to ask for. */
const askOfKey: Readonly<Record<string, Ask>> = { m: 'must', w: 'wish', Delete: 'none', Backspace: 'none' };

/** The way of a reading to its screen, or the link at which it breaks. */
const lightsOf = (index: CardBoat, plan: Plan, { cell: { unit, entry } }: CellAt): readonly string[] =>
  entry === undefined ? [unit] : [...wayLights(index, plan, entry.by), ...breakLights(entry)];

/** The rows of the table: what is asked for, what somebody opened, and all other readings when they are shown. */
const useRows = (boat: Boat, plan: Plan) => {
  const [more, setMore] = useState<readonly Pick<NeedsRow, 'reading' | 'instance'>[]>([]);
  const [isWhole, setIsWhole] = useState(false);
  const matrix = useMemo(() => needsMatrix({ boat, plan }, more), [boat, plan, more]);
  const rows = isWhole ? [...matrix.rows, ...matrix.others].sort(byTrade) : matrix.rows;
  const openNext = ({ reading }: NeedsRow): void => {
    const taken = rows.filter((row) => row.reading === reading).map(({ instance }) => instance ?? -1);
    setMore([...more, { reading, instance: Math.max(...taken) + 1 }]);
  };
  return { matrix, rows, isWhole, showWhole: () => setIsWhole(!isWhole), openNext };
};

/**
 * What must be seen where: readings down, screens across, before and after the refit. Filled by pressing, by drawing
 * across cells, or from the keyboard: arrows move, Enter goes on, m is a must, w a wish, Delete nothing.
 */
export const NeedsTable = ({
  boat,
  plan,
  lights,
  onClose,
}: {
  boat: Boat;
  plan: Plan;
  lights: LightStore;
  onClose: () => void;
}): ReactNode => {
  const edit = useEdit();
  const table = useRef<HTMLTableElement>(null);
  const index = useMemo(() => cardBoat(boat), [boat]);
  const { matrix, rows, isWhole, showWhole, openNext } = useRows(boat, plan);
  const { columns } = matrix;
  // by name, because a row that is filled moves to its place among the others
  const [rested, setRested] = useState<{ readonly row: string; readonly unit: string } | undefined>(undefined);
  const here: CellPlace = {
    row: Math.max(
      0,
      rows.findIndex(({ key }) => key === rested?.row),
    ),
    column: Math.max(
      0,
      columns.findIndex(({ unit }) => unit === rested?.unit),
    ),
  };

  const cellAt = useCallback(
    ({ row, column }: CellPlace): (CellAt & { row: NeedsRow; name: string }) | undefined => {
      const [line, head] = [rows[row], columns[column]];
      const cell = line?.cells[column];
      return line === undefined || head === undefined || cell === undefined
        ? undefined
        : { row: line, cell, name: head.name };
    },
    [rows, columns],
  );
  const fill = useCallback(
    (cells: readonly CellAt[], ask: Ask): void => {
      const { edits, says } = fillCells(cells, ask);
      if (edits.length > 0) edit(edits, says);
    },
    [edit],
  );
  const fillKeys = useCallback(
    (keys: ReadonlySet<string>, ask: Ask): void =>
      fill(
        rows.flatMap((row) =>
          columns.flatMap((column, at) => {
            const cell = row.cells[at];
            return cell === undefined || !keys.has(idOf(row, column)) ? [] : [{ row, cell }];
          }),
        ),
        ask,
      ),
    [fill, rows, columns],
  );
  const painting = useCellPainting(fillKeys);

  const go = (place: CellPlace): void => {
    const [row, column] = [rows[place.row], columns[place.column]];
    if (row === undefined || column === undefined) return;
    table.current?.querySelector<HTMLElement>(`[data-cell="${CSS.escape(idOf(row, column))}"]`)?.focus();
  };
  // whoever opened the table wants to type in it
  useEffect(() => table.current?.querySelector<HTMLElement>('[data-cell]')?.focus({ preventScroll: true }), []);
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const next = nextCell(here, event.key, { rows: rows.length, columns: columns.length });
    const ask = askOfKey[event.key];
    const at = cellAt(here);
    if (next !== undefined) go(next);
    else if (ask !== undefined && at !== undefined) fill([at], ask);
    else return;
    event.preventDefault();
  };

  return (
    <section className="needs-table" aria-label={words.mustBeSeen}>
      <div className="needs-head">
        <h2>{words.mustBeSeen}</h2>
        <button type="button" className="needs-tool" aria-pressed={isWhole} onClick={showWhole}>
          {isWhole ? words.onlyAsked : words.moreReadings(matrix.others.length)}
        </button>
        <button type="button" className="needs-tool" onClick={onClose}>
          {words.close}
        </button>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it */}
      <section className="needs-scroll" tabIndex={0} aria-label={words.tableOf}>
        <table ref={table} aria-label={words.mustBeSeen}>
          <thead>
            <tr>
              <th scope="col">
                <span className="unseen">{words.reading}</span>
              </th>
              {columns.map(({ unit, name, label }) => (
                <th key={unit} scope="col" title={name}>
                  {label}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, r) => (
              <tr key={row.key}>
                <th scope="row">
                  {row.name}
                  {row.isNumbered ? (
                    <button
                      type="button"
                      className="needs-more"
                      aria-label={words.oneMore(row.name)}
                      onClick={() => openNext(row)}
                    >
                      +
                    </button>
                  ) : null}
                </th>
                {columns.map((column, c) => {
                  const at = cellAt({ row: r, column: c });
                  return at === undefined ? null : (
                    <NeedsCellView
                      key={column.unit}
                      cell={at.cell}
                      id={idOf(row, column)}
                      isStop={here.row === r && here.column === c}
                      about={words.readingAt(row.name, column.name)}
                      painting={painting}
                      onKeyDown={onKeyDown}
                      onFill={() => fill([at], nextAsk(at.cell))}
                      onRest={() => {
                        setRested({ row: row.key, unit: column.unit });
                        lights.rest(lightsOf(index, plan, at));
                      }}
                    />
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <div className="needs-detail" aria-live="polite">
        <NeedsDetail boat={boat} at={rested === undefined ? undefined : cellAt(here)} />
      </div>
    </section>
  );
};
