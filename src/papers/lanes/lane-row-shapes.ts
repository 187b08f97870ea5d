import { arrowHead, balloon, converterSquare, pathShape } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Shape, TextShape } from '../drawing/shapes.ts';
import { codedStrokes } from '../sheet/coded-strokes.ts';
import type { LineCode } from '../sheet/line-code.ts';
import { stripLineMm, stripWords } from '../sheet/strip-words.ts';
import type { LaneBreak } from './break-marks.ts';
import { laneCode } from './lane-code.ts';
import type { LaneEdge } from './lane-edges.ts';
import { type LaneRow, laneRadiusMm, laneRowMm, type Outline, squareMm, wordsXMm } from './lane-rows.ts';
import type { LaneUnit } from './lane-tree.ts';

/** Where the first row of an outline stands, and whether the rest follow upwards or downwards. */
export interface OutlineAt {
  readonly at: Point;
  readonly sign: 1 | -1;
}

export type BreaksOf = ReadonlyMap<LaneUnit, readonly LaneBreak[]>;

/** Half the gap that a letter takes out of its line. */
const letterHalfMm = 1.8;
const letter = { sizeMm: 2.95, face: 'words', weight: 'semibold' } as const;

/** A plain thin line where lines of several kinds leave a unit together. */
const shared: LineCode = { words: 'lines', ink: 'ink', widthMm: 0.2 };

/** A cross where the way of a reading breaks. */
export const crossShape = ([xMm, yMm]: Point, breaks: readonly LaneBreak[]): Shape[] => {
  if (breaks.length === 0) return [];
  const armMm = 1.25;
  const arms: Point[][] = [
    [
      [xMm - armMm, yMm - armMm],
      [xMm + armMm, yMm + armMm],
    ],
    [
      [xMm - armMm, yMm + armMm],
      [xMm + armMm, yMm - armMm],
    ],
  ];
  const about = breaks.map(({ id }) => id);
  const stroke = { ink: 'accent', widthMm: 0.6 } as const;
  return [
    {
      kind: 'group',
      label: `breaks here: ${breaks.flatMap(({ readings }) => readings).join(', ')}`,
      shapes: [pathShape(arms.flatMap(polyline), { stroke, about })],
    },
  ];
};

const wordShapes = (row: LaneRow, [xMm, yMm]: Point): TextShape[] =>
  row.words.map((text, order) => ({
    kind: 'text',
    xMm: xMm + wordsXMm(row),
    yMm: yMm + 1.05 + (order - (row.words.length - 1) / 2) * stripLineMm,
    text,
    ...stripWords,
    ink: row.unit.again ? 'quiet' : 'ink',
    about: row.unit.mark.about,
  }));

/** A balloon whose ring is broken stands in another lane as well. */
const againDashMm = [0.9, 0.7];

/** A unit: its square where it is a converter, its balloon, its words. */
export const unitShape = (row: LaneRow, at: Point): Shape => {
  const { mark, again } = row.unit;
  const centre: Point = row.square ? [at[0] + laneRadiusMm + 0.4 + squareMm / 2, at[1]] : at;
  const filled = !again && mark.findings.length > 0;
  const round = balloon(centre, { number: mark.number, radiusMm: laneRadiusMm, filled, about: mark.about });
  return {
    kind: 'group',
    label: `${mark.number}, ${mark.kit.name}${again ? ', as in another lane' : ''}`,
    focusable: true,
    about: mark.about,
    shapes: [
      ...(row.square ? converterSquare(at, { sideMm: squareMm, about: mark.about }) : []),
      ...round.map((shape) =>
        again && shape.kind === 'circle'
          ? { ...shape, stroke: { ink: 'ink' as const, widthMm: 0.3, dashMm: againDashMm } }
          : shape,
      ),
      ...wordShapes(row, at),
    ],
  };
};

/** The arrow heads of a level line: at the unit where the one it hangs on talks, at its start where the unit does. */
const arrowShapes = (edge: LaneEdge, unit: string, [from, to]: readonly [Point, Point]): Shape[] => {
  const code = laneCode(edge.kind);
  if (code.arrows !== true) return [];
  const look = { ink: code.ink, about: edge.lines };
  const talks = edge.talkers.has(unit);
  const hears = [...edge.talkers].some((talker) => talker !== unit);
  return [
    ...(hears ? [arrowHead(to, [1, 0], look)] : []),
    ...(talks ? [arrowHead([from[0] + 0.2, from[1]], [-1, 0], look)] : []),
  ];
};

/** A line from a corner to the unit at its end, its letter in a gap. */
const levelShapes = (
  lead: readonly Point[],
  toMm: number,
  { edge, unit }: { edge: LaneEdge; unit: string },
): Shape[] => {
  const code = laneCode(edge.kind);
  const corner = lead.at(-1) ?? [0, 0];
  const to: Point = [toMm, corner[1]];
  const look = { code, guessed: false, about: edge.lines };
  const arrows = arrowShapes(edge, unit, [corner, to]);
  if (code.letter === undefined) return [...codedStrokes([...lead, to], look), ...arrows];
  const middleMm = (corner[0] + toMm) / 2;
  return [
    ...codedStrokes([...lead, [middleMm - letterHalfMm, corner[1]]], look),
    ...codedStrokes([[middleMm + letterHalfMm, corner[1]], to], look),
    {
      kind: 'text',
      xMm: middleMm,
      yMm: corner[1] + letter.sizeMm * 0.34,
      text: code.letter,
      ...letter,
      anchor: 'middle',
      ink: code.ink,
      about: edge.lines,
    },
    ...arrows,
  ];
};

/** What hangs on one unit: a line down from it, and off that a line to each. */
const hangingShapes = (
  outline: Outline,
  parent: LaneRow,
  pointOf: (row: LaneRow) => Point,
  breaks: BreaksOf,
): Shape[] => {
  const hung = outline.rows.filter((row) => row.parent === parent.row);
  const [xMm, yMm] = pointOf(parent);
  let fromMm = yMm + Math.sign((pointOf(hung[0] ?? parent)[1] ?? yMm) - yMm) * laneRadiusMm;
  return hung.flatMap((row, at): Shape[] => {
    const { edge, mark } = row.unit;
    if (edge === undefined) return [];
    const rest = hung.slice(at).flatMap((one) => one.unit.edge ?? []);
    const isAlike = rest.every(({ kind }) => kind === edge.kind);
    const [toMm, rowYMm] = pointOf(row);
    const corner: Point = [xMm, rowYMm];
    const down: Point[] = [[xMm, fromMm], corner];
    const isLast = rest.length === 1;
    const about = rest.flatMap(({ lines }) => lines);
    const look = { code: isAlike ? laneCode(edge.kind) : shared, guessed: false, about };
    fromMm = rowYMm;
    return [
      ...(isLast ? [] : codedStrokes(down, look)),
      ...levelShapes(isLast ? down : [corner], toMm - laneRadiusMm, { edge, unit: mark.kit.id }),
      ...crossShape(corner, breaks.get(row.unit) ?? []),
    ];
  });
};

/** An outline where it was set down: the lines between its units, then the units. */
export const outlineShapes = (outline: Outline, { at, sign }: OutlineAt, breaks: BreaksOf): Shape[] => {
  const pointOf = ({ xMm, row }: LaneRow): Point => [at[0] + xMm, at[1] + sign * row * laneRowMm];
  return [
    ...outline.rows.flatMap((row) => hangingShapes(outline, row, pointOf, breaks)),
    ...outline.rows.map((row) => unitShape(row, pointOf(row))),
  ];
};
