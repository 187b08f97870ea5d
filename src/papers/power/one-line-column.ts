import { balloon, pathShape } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Ink, Shape, Stroke, TextShape } from '../drawing/shapes.ts';
import { wavyLine } from '../drawing/wavy-line.ts';
import {
  goesOnMm,
  isHead,
  leadMm,
  lineMm,
  nameStyle,
  type OneLineAcross,
  type OneLineColumn,
  type RowLine,
  type RowText,
  type SetRow,
  wordsStyle,
} from './one-line-rows.ts';
import type { PowerNode } from './power-node.ts';
import { powerSymbol, symbolMm } from './power-symbols.ts';

/** The number of a unit as the boat drawing has it; filled where a finding wants an eye. */
export interface UnitNumber {
  readonly number: number;
  readonly filled: boolean;
}

interface Given {
  readonly across: OneLineAcross;
  readonly at: Point;
  readonly numbers: ReadonlyMap<string, UnitNumber>;
}

const wire: Stroke = { ink: 'power', widthMm: 0.35 };
const feeder: Stroke = { ink: 'power', widthMm: 0.6 };
const bar: Stroke = { ink: 'power', widthMm: 1.3 };
const radiusMm = 2.6;

const text = ({ words, look }: RowLine, at: Point, ink: Ink): TextShape => ({
  kind: 'text',
  xMm: at[0],
  yMm: at[1],
  text: words,
  ...(look === 'name' ? nameStyle : wordsStyle),
  ink,
});

/** Lines over the line, the last nearest to it, and lines under it. */
const textShapes = ({ xMm, over, under }: RowText, row: SetRow, at: Point): Shape[] => {
  const inkOf = ({ look }: RowLine): Ink => {
    if (look === 'name' && row.node.isOpen) return 'accent';
    return look === 'quiet' ? 'quiet' : 'ink';
  };
  const xOnSheet = at[0] + xMm;
  return [
    ...over.map((own, order) => text(own, [xOnSheet, at[1] - 1.5 - (over.length - 1 - order) * lineMm], inkOf(own))),
    ...under.map((own, order) => text(own, [xOnSheet, at[1] + row.underFromMm + order * lineMm], inkOf(own))),
  ];
};

const line = (from: Point, to: Point, stroke: Stroke): Shape => pathShape(polyline([from, to]), { stroke });

const symbolsOf = (row: SetRow, from: Point): Shape[] =>
  row.node.symbols.flatMap((kind, at) => powerSymbol(kind, [from[0] + at * symbolMm, from[1]]));

/** The free end of a circuit that nothing hangs on: an open terminal. */
const terminal = ([x, y]: Point): Shape => ({
  kind: 'circle',
  xMm: x + 0.9,
  yMm: y,
  radiusMm: 0.9,
  stroke: wire,
  fill: 'paper',
});

const endShapes = (node: PowerNode, at: Point, numbers: Given['numbers']): Shape[] => {
  if (node.end === 'free') return [terminal(at)];
  if (node.end !== 'load' && node.end !== 'bus' && node.end !== 'converter') return [];
  const number = node.about.map((id) => numbers.get(id)).find((found) => found !== undefined);
  const marks =
    number === undefined ? [] : balloon([at[0] + symbolMm + 2, at[1]], { ...number, radiusMm, about: node.about });
  return [...powerSymbol(node.end, at), ...marks];
};

/** On a narrow sheet the line of a head leads back under its symbols to the bar. */
const backMm = 3.6;

/** From the bar through its symbols to its end; wavering while its length is guessed. */
const runShapes = (row: SetRow, y: number, { across, at, numbers }: Given): Shape[] => {
  const { node, fromMm } = row;
  const gapMm = row.bars.length === 0 ? 0 : leadMm;
  const symbolsFrom: Point = [at[0] + fromMm + gapMm, y];
  const after: Point = [symbolsFrom[0] + node.symbols.length * symbolMm, y];
  const lead = gapMm === 0 ? [] : [line([at[0] + fromMm, y], symbolsFrom, wire)];
  const before = [...lead, ...symbolsOf(row, symbolsFrom)];
  if (node.end === 'nothing') return before;
  const ownBarMm = at[0] + (across.barsMm[row.depth] ?? 0);
  if (isHead(node)) {
    const back: Point[] = [after, [after[0], y + backMm], [ownBarMm, y + backMm]];
    return [...before, pathShape(polyline(across.isNarrow ? back : [after, [ownBarMm, y]]), { stroke: feeder })];
  }
  const end: Point = [at[0] + across.endMm, y];
  const run = node.guessed ? wavyLine([after, end]) : polyline([after, end]);
  return [...before, pathShape(run, { stroke: wire }), ...endShapes(node, end, numbers)];
};

const labelOf = ({ name, guard, wire: run, facts }: PowerNode): string =>
  [name, guard, run, ...facts].filter((words) => words !== '').join('; ');

const rowGroup = (row: SetRow, y: number, given: Given): Shape => ({
  kind: 'group',
  label: labelOf(row.node),
  focusable: row.node.end !== 'nothing' || row.node.isOpen,
  about: row.node.about,
  shapes: [...runShapes(row, y, given), ...row.texts.flatMap((own) => textShapes(own, row, [given.at[0], y]))],
});

/** The bars of a column: each from its head, or from the top where it goes on, to the last row that hangs on it. */
const barShapes = (column: OneLineColumn, ys: readonly number[], bottomMm: number, { across, at }: Given): Shape[] => {
  const heads = [...column.through, ...column.rows.map(({ node }) => node)].filter(
    (node) => isHead(node) && node.children.length > 0,
  );
  return heads.flatMap((head): Shape[] => {
    const own = column.rows.findIndex(({ node }) => node === head);
    const depth = own >= 0 ? (column.rows[own]?.depth ?? 0) : column.goesOn.indexOf(head);
    const hung = column.rows.flatMap((row, order) => (row.bars.at(-1) === head ? [ys[order] ?? 0] : []));
    const isLast = column.rows.some(({ node }) => node === head.children.at(-1));
    const headMm = (ys[own] ?? 0) + (across.isNarrow ? backMm : 0);
    const from = own >= 0 ? headMm : at[1] + goesOnMm - 1.5;
    const to = isLast ? Math.max(...hung) : bottomMm;
    const xMm = at[0] + (across.barsMm[depth] ?? 0);
    return to <= from ? [] : [line([xMm, from], [xMm, to], head.end === 'bar' ? bar : feeder)];
  });
};

/** One column of the drawing, its top left corner at `at`. */
export const columnShapes = (column: OneLineColumn, given: Given): { shapes: Shape[]; bottomMm: number } => {
  const goesOn = column.goesOn.map(({ name }) => name.split(':')[0] ?? name).join(' > ');
  let topMm = given.at[1] + (column.goesOn.length === 0 ? 0 : goesOnMm);
  const ys = column.rows.map((row) => {
    const y = topMm + row.overMm;
    topMm += row.heightMm;
    return y;
  });
  return {
    shapes: [
      ...(goesOn === ''
        ? []
        : [text({ words: `goes on: ${goesOn}`, look: 'quiet' }, [given.at[0], given.at[1] + 3], 'quiet')]),
      // bars under the rows, so that a row that is lit lies over them
      ...barShapes(column, ys, topMm, given),
      ...column.rows.map((row, index) => rowGroup(row, ys[index] ?? 0, given)),
    ],
    bottomMm: topMm,
  };
};
