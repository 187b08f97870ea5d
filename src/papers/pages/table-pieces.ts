import type { Shape } from '../drawing/shapes.ts';
import type { ListTable } from '../table/list-table.ts';
import { columnWidths } from './column-widths.ts';
import { lineShapes, type Piece } from './piece.ts';
import { setLines } from './set-lines.ts';
import { gutterMm, ownColumns, pointShiftMm, type SetColumn, tableParts } from './table-columns.ts';
import { typeStyles } from './type-styles.ts';
import { headingPieces, ruleShape, tickBox, wordPieces } from './word-pieces.ts';

/** Room above and below the words of a row, and the height a row to write in is given. */
const padMm = 0.9;
const writingMm = 8;

interface Placed {
  readonly set: SetColumn;
  readonly leftMm: number;
  readonly widthMm: number;
}

const placedColumns = (columns: readonly SetColumn[], widthMm: number): Placed[] => {
  const widths = columnWidths(columns, widthMm);
  let leftMm = 0;
  return columns.map((set, at) => {
    const placed = { set, leftMm, widthMm: widths[at] ?? 0 };
    leftMm += placed.widthMm + gutterMm;
    return placed;
  });
};

const fullMm = (placed: readonly Placed[]): number => {
  const last = placed.at(-1);
  return last === undefined ? 0 : last.leftMm + last.widthMm;
};

/** Upright hairlines beside what is written in, so that each figure finds its own box. */
const boxLines = (placed: readonly Placed[], leftMm: number, topMm: number, heightMm: number): Shape[] =>
  placed
    .filter(({ set, leftMm: own }, at) => own > 0 && (set.isBlank || placed[at - 1]?.set.isBlank === true))
    .map(({ leftMm: own }) => ({
      kind: 'path',
      d: `M${(leftMm + own - gutterMm / 2).toFixed(2)} ${topMm.toFixed(2)}v${heightMm.toFixed(2)}`,
      stroke: { ink: 'quiet', widthMm: 0.12 },
    }));

/** The head of a table: its columns with their units, a rule below. */
const headPiece = (placed: readonly Placed[]): Piece => {
  const style = typeStyles.head;
  const heads = placed.map(({ set, widthMm }) => setLines(set.head, style, widthMm));
  const most = Math.max(1, ...heads.map((lines) => lines.length));
  const heightMm = most * style.pitchMm + 1.6;
  return {
    heightMm,
    gapMm: 2.5,
    shapes: ({ leftMm, topMm }) => [
      ...placed.flatMap(({ set, leftMm: own, widthMm }, at) => {
        const lines = heads[at] ?? [];
        const lowMm = topMm + (most - lines.length) * style.pitchMm;
        return lineShapes(lines, style, {
          leftMm: leftMm + own,
          topMm: lowMm,
          ...(set.column.kind === 'figure' ? { rightMm: leftMm + own + widthMm } : {}),
        });
      }),
      ruleShape(leftMm, topMm + heightMm - 0.6, fullMm(placed), 0.35),
    ],
    isChained: true,
    says: [],
  };
};

const cellShapes = (
  { set, leftMm, widthMm }: Placed,
  lines: readonly string[],
  left: number,
  topMm: number,
): Shape[] => {
  if (set.column.kind === 'tick' && lines.join('') === '') return [tickBox(left + leftMm, topMm + 0.1, 3)];
  return lineShapes(lines, set.style, {
    leftMm: left + leftMm,
    topMm,
    ...(set.column.kind === 'figure' ? { rightMm: left + leftMm + widthMm - pointShiftMm(set, lines.join('')) } : {}),
  });
};

/** One row, or as much of one as a page holds. */
const rowPiece = (
  placed: readonly Placed[],
  cells: readonly (readonly string[])[],
  says: readonly string[],
  { isLast, isWritten }: { isLast: boolean; isWritten: boolean },
): Piece => {
  const tallest = Math.max(...cells.map((lines, at) => lines.length * (placed[at]?.set.style.pitchMm ?? 0)));
  const heightMm = Math.max(tallest + 2 * padMm, isWritten ? writingMm : 0);
  return {
    heightMm,
    gapMm: 0,
    shapes: ({ leftMm, topMm }) => [
      ...placed.flatMap((column, at) => cellShapes(column, cells[at] ?? [], leftMm, topMm + padMm)),
      ...boxLines(placed, leftMm, topMm, heightMm),
      ruleShape(leftMm, topMm + heightMm, fullMm(placed), isLast ? 0.3 : 0.12),
    ],
    says,
  };
};

const rowPieces = (placed: readonly Placed[], row: number, isLast: boolean, roomMm: number): Piece[] => {
  const cells = placed.map(({ set, widthMm }) => setLines(set.cells[row] ?? '', set.style, widthMm));
  const says = placed.map(({ set }) => set.cells[row] ?? '').filter((text) => text !== '');
  const isWritten = placed.some(({ set }) => set.isBlank);
  // a row taller than a page goes on over it, as many lines at a time as there is room for
  const most = Math.max(1, Math.floor((roomMm - 2 * padMm) / typeStyles.figure.pitchMm));
  const tall = Math.max(...cells.map((lines) => lines.length));
  const pieces: Piece[] = [];
  for (let at = 0; at < Math.max(1, tall); at += most) {
    const part = cells.map((lines) => lines.slice(at, at + most));
    pieces.push(rowPiece(placed, part, at === 0 ? says : [], { isLast: isLast && at + most >= tall, isWritten }));
  }
  return pieces;
};

/** The title of a table that goes on on another page. */
const againPiece = (title: string): Piece => ({
  heightMm: typeStyles.quiet.pitchMm,
  gapMm: 0,
  shapes: (corner) => lineShapes([`${title}, continued`], typeStyles.quiet, corner),
  isChained: true,
  says: [],
});

/** The title of one part of a table that is wider than the page. */
const partTitle = (name: string): Piece => ({
  heightMm: typeStyles.strong.pitchMm,
  gapMm: 5,
  shapes: (corner) => lineShapes([name], typeStyles.strong, corner),
  isChained: true,
  says: [],
});

const partPieces = (
  columns: readonly SetColumn[],
  { title, rows }: { title: string; rows: number },
  { widthMm, roomMm }: { widthMm: number; roomMm: number },
): Piece[] => {
  const placed = placedColumns(columns, widthMm);
  const head = headPiece(placed);
  const repeats = title === '' ? [head] : [againPiece(title), head];
  const body = Array.from({ length: rows }, (_, row) => rowPieces(placed, row, row === rows - 1, roomMm * 0.8)).flat();
  return [
    head,
    ...body.map((piece, at) => ({
      ...piece,
      ...(at === 0 ? {} : { repeats }),
      // the last row does not stand alone under a head of its own
      ...(at === body.length - 2 && body.length > 2 ? { isChained: true } : {}),
    })),
  ];
};

/** A list as pieces: its title and what it says, its head, a piece a row; in parts where it is wider than the page. */
export const tablePieces = (
  table: ListTable,
  room: { widthMm: number; heightMm: number },
  { kind, lastHeading }: { kind: readonly SetColumn[]; lastHeading: string },
): Piece[] => {
  const { title, says, rows, empty } = table;
  const { widthMm, heightMm } = room;
  const titled = title === '' || title === lastHeading ? [] : headingPieces(title, widthMm, { level: 1 });
  const said = says === undefined || says === '' ? [] : wordPieces(says, widthMm, { style: typeStyles.quiet });
  if (rows.length === 0) return [...titled, ...wordPieces(empty, widthMm)];
  const lead = [...titled, ...said.map((piece) => ({ ...piece, isChained: true }))];
  const parts = tableParts(kind, widthMm);
  const pieces = parts.flatMap((columns, at) => {
    const name = parts.length === 1 ? title : `${title}, part ${at + 1} of ${parts.length}`;
    const own = ownColumns(columns, table);
    return [
      ...(parts.length === 1 ? [] : [partTitle(name)]),
      ...partPieces(own, { title: name, rows: rows.length }, { widthMm, roomMm: heightMm }),
    ];
  });
  return [...lead, ...pieces];
};
