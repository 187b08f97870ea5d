import { endSquare, pathShape, teeSquare } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { polygon, polyline, rectangle } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { wrapText } from '../drawing/wrap-text.ts';
import { codedStrokes } from '../sheet/coded-strokes.ts';
import type { DrawnBoat } from '../sheet/drawn-boat.ts';
import { lineCode } from '../sheet/line-code.ts';
import { stretchText } from '../sheet/strip-layout.ts';
import type { StripNode } from '../sheet/strip-nodes.ts';
import { stripFigures, stripLineMm, stripWords } from '../sheet/strip-words.ts';
import { trunkPieces } from '../sheet/trunk-pieces.ts';
import { laneCode } from './lane-code.ts';
import { type LaneItem, type LaneShape, leastLaneMm, type SetItem, setLane } from './lane-columns.ts';
import { type BreaksOf, crossShape, outlineShapes, unitShape } from './lane-row-shapes.ts';
import { laneRadiusMm, laneRowMm, type Outline, outlineOf } from './lane-rows.ts';
import type { Lane, LaneUnit } from './lane-tree.ts';

/** The room at the left in which a lane is named. */
export const gutterMm = 31;

/** From the trunk or the hub to the middle of the nearest balloon. */
const stemMm = 10.4;

const bothSides: LaneShape = { pitchMm: 3.8, sides: 'both' };
const belowOnly: LaneShape = { pitchMm: 3.8, sides: 'below' };
const stacked: LaneShape = { pitchMm: 0, sides: 'below' };
const shapeOf = ({ kind }: Lane): LaneShape => (kind === 'bus' ? bothSides : kind === 'own' ? stacked : belowOnly);

/** The boat's length on the sheet. */
export interface LaneScale {
  readonly widthMm: number;
  readonly zeroMm: number;
  readonly mmPerM: number;
}

interface Piece extends LaneItem {
  readonly node?: StripNode;
  readonly unit?: LaneUnit;
}

/** A lane laid out: what stands where, and how much room it takes over and under its line. */
export interface LaidLane {
  readonly lane: Lane;
  readonly pieces: readonly Piece[];
  readonly spots: readonly SetItem[];
  readonly aboveMm: number;
  readonly belowMm: number;
}

const alongOf = (xM: number, { zeroMm, mmPerM }: LaneScale): number => zeroMm + xM * mmPerM;

const roomOf = ({ widthMm }: Pick<LaneScale, 'widthMm'>): { fromMm: number; toMm: number } => ({
  fromMm: gutterMm + 3,
  toMm: widthMm - 4,
});

/** The nodes of a bus with their units, in the order of the trunk; of other lanes the units alone. */
const piecesOf = (lane: Lane, index: DrawnBoat, scale: LaneScale, tied: ReadonlySet<string>): Piece[] => {
  const wishOf = (unit: LaneUnit): number => alongOf(unit.mark.place.xM, scale);
  if (lane.strip === undefined) {
    return lane.heads.map((unit) => ({ unit, outline: outlineOf(unit, index), wishMm: wishOf(unit) }));
  }
  const { nodes, order } = lane.strip;
  const room = roomOf(scale);
  const totalM = Math.max(nodes.at(-1)?.alongM ?? 0, 0.001);
  const heads = [...lane.heads];
  return nodes.map((node): Piece => {
    const placeXM = index.places.get(node.place)?.xM ?? 0;
    const share = node.alongM / totalM;
    const wishMm = order === 'axis' ? alongOf(placeXM, scale) : room.fromMm + share * (room.toMm - room.fromMm - 20);
    const unit = node.mark === undefined ? undefined : heads.shift();
    if (unit === undefined) return { node, wishMm };
    const tie = tied.has(unit.mark.kit.id) && !unit.again;
    return { node, unit, tie, outline: outlineOf(unit, index), wishMm };
  });
};

/** How wide a sheet must be for this lane. */
export const leastSheetMm = (lane: Lane, index: DrawnBoat, tied: ReadonlySet<string>): number => {
  const scale = { widthMm: 0, zeroMm: 0, mmPerM: 1 };
  return gutterMm + 7 + leastLaneMm(piecesOf(lane, index, scale, tied), shapeOf(lane));
};

const titleLines = (words: string): readonly string[] => wrapText(words, stripWords, gutterMm - 5) ?? [words];

const hubRow = (hub: LaneUnit, index: DrawnBoat) => {
  const [row] = outlineOf({ ...hub, hangs: [] }, index, gutterMm).rows;
  return row === undefined ? undefined : { ...row, words: [] };
};

const hubWords = (hub: LaneUnit): readonly string[] => titleLines(hub.mark.label);

/** Sets out one lane; `tied`: units from which a line leads down to the lane below. */
export const layLane = (lane: Lane, index: DrawnBoat, scale: LaneScale, tied: ReadonlySet<string>): LaidLane => {
  const pieces = piecesOf(lane, index, scale, tied);
  const spots = setLane(pieces, roomOf(scale), shapeOf(lane));
  const rowsOn = (sign: 1 | -1): number =>
    Math.max(
      0,
      ...spots.map((spot, at) => (spot.sign === sign ? spot.rowsBefore + (pieces[at]?.outline?.rows.length ?? 0) : 0)),
    );
  const reachMm = (rows: number): number => (rows === 0 ? 5 : stemMm + (rows - 1) * laneRowMm + laneRadiusMm + 1.5);
  const title = lane.title.flatMap(titleLines).length * stripLineMm;
  const hub = lane.hub === undefined ? 0 : 4 + hubWords(lane.hub).length * stripLineMm;
  return {
    lane,
    pieces,
    spots,
    aboveMm: Math.max(lane.kind === 'bus' ? reachMm(rowsOn(-1)) : 4, title + 4),
    belowMm: Math.max(lane.kind === 'own' ? reachMm(rowsOn(1)) - stemMm + 3 : reachMm(rowsOn(1)), hub + 3),
  };
};

const gutterShapes = ({ lane }: LaidLane, yMm: number, index: DrawnBoat): Shape[] => {
  const title = lane.title.flatMap(titleLines);
  const row = lane.hub === undefined ? undefined : hubRow(lane.hub, index);
  const text = (words: string, y: number, look: { name: boolean }): Shape => ({
    kind: 'text',
    xMm: 4,
    yMm: y,
    text: words,
    ...stripWords,
    ...(look.name ? { weight: 'semibold' as const } : {}),
    ink: look.name ? 'ink' : 'quiet',
    about: lane.about,
  });
  const topMm = lane.hub === undefined ? yMm - 1.4 : yMm - 4.2;
  return [
    ...title.map((words, at) => text(words, topMm - (title.length - 1 - at) * stripLineMm, { name: at === 0 })),
    ...(row === undefined || lane.hub === undefined
      ? []
      : [
          unitShape(row, [4 + laneRadiusMm, yMm]),
          ...hubWords(lane.hub).map((words, at) => text(words, yMm + 5.6 + at * stripLineMm, { name: false })),
        ]),
  ];
};

const trunkShapes = ({ lane, spots }: LaidLane, y: number): Shape[] => {
  const { strip } = lane;
  if (strip === undefined) return [];
  return trunkPieces(strip).flatMap(({ from, about, guessed, stretch }): Shape[] => {
    const [fromMm, toMm] = [spots[from]?.xMm ?? 0, spots[from + 1]?.xMm ?? 0];
    const line: Point[] = [
      [fromMm, y],
      [toMm, y],
    ];
    const strokes = codedStrokes(line, { code: lineCode.trunk, guessed, about });
    const text = stretch === undefined ? '' : stretchText(stretch, strip.units);
    if (text === '' || textWidthMm(text, stripFigures) > toMm - fromMm - 3.4) return strokes;
    return [
      ...strokes,
      {
        kind: 'text',
        xMm: (fromMm + toMm) / 2,
        yMm: y - 1.7,
        text,
        ...stripFigures,
        anchor: 'middle',
        ink: 'quiet',
        about,
      },
    ];
  });
};

/** A hub is a long bar with a square for each socket in use. */
const barShapes = (laid: LaidLane, y: number, ties: readonly { xMm: number }[]): Shape[] => {
  const { hub } = laid.lane;
  if (hub === undefined) return [];
  const xs = [...laid.spots, ...ties].map(({ xMm }) => xMm);
  const fromMm = 4 + 2 * laneRadiusMm + (laid.lane.hub === undefined ? 0 : 0.4);
  const toMm = Math.max(fromMm + 6, ...xs) + 3;
  const bar = rectangle({ leftMm: fromMm, topMm: y - 0.8, widthMm: toMm - fromMm, heightMm: 1.6 });
  return [pathShape(bar, { stroke: { ink: 'ethernet', widthMm: 0.35 }, fill: 'paper', about: hub.mark.about })];
};

const feedArrow = ([xMm, y]: Point, about: readonly string[]): Shape[] => [
  pathShape(
    polyline([
      [xMm, y - 5],
      [xMm, y - 1.6],
    ]),
    { stroke: { ink: 'power', widthMm: 0.6, dashMm: [...lineCode.feed.dashMm] }, about },
  ),
  pathShape(
    polygon([
      [xMm, y - 1.3],
      [xMm - 0.9, y - 3.5],
      [xMm + 0.9, y - 3.5],
    ]),
    { fill: 'power', about },
  ),
  teeSquare([xMm, y], { about }),
];

/** A gap between two slanting strokes: here the trunk goes on in another part. */
export const cutStrokes = ([xMm, y]: Point, about: readonly string[]): Shape[] =>
  [-0.7, 0.7].map((apartMm) =>
    pathShape(
      polyline([
        [xMm + apartMm - 1, y + 2.2],
        [xMm + apartMm + 1, y - 2.2],
      ]),
      { stroke: { ink: 'data', widthMm: 0.35 }, about },
    ),
  );

const nodeShapes = (node: StripNode, at: Point, { bus, cuts }: { bus: string; cuts: Lane['cuts'] }): Shape[] => {
  const about = [bus, ...(node.tee === undefined ? [node.place] : [node.tee])];
  if (cuts?.has(node) === true) return cutStrokes(at, about);
  if (node.kind === 'end') return endSquare(at, { about });
  return node.kind === 'feed' ? feedArrow(at, about) : [teeSquare(at, { about })];
};

/** The line from the trunk or the hub to a unit, with its tee or socket. */
const stemShapes = (lane: Lane, piece: Piece, [from, to]: readonly [Point, Point], breaks: BreaksOf): Shape[] => {
  const { node, unit } = piece;
  if (unit === undefined) return [];
  const crossed = crossShape(
    [to[0], to[1] - Math.sign(to[1] - from[1]) * (laneRadiusMm + 1.6)],
    breaks.get(unit) ?? [],
  );
  if (lane.kind === 'bus') {
    const about = node?.drop === undefined ? [] : [node.drop.id];
    const tee = [...(node?.tee === undefined ? [] : [node.tee]), ...unit.mark.about];
    const look = { code: lineCode.drop, guessed: false, about };
    return [...codedStrokes([from, to], look), teeSquare(from, { about: tee }), ...crossed];
  }
  const { edge } = unit;
  if (edge === undefined) return [];
  const look = { code: laneCode(edge.kind), guessed: false, about: edge.lines };
  return [...codedStrokes([from, to], look), teeSquare(from, { sideMm: 1.6, about: edge.lines }), ...crossed];
};

const pieceShapes = (laid: LaidLane, at: number, y: number, breaks: BreaksOf): Shape[] => {
  const { lane } = laid;
  const [piece, spot] = [laid.pieces[at], laid.spots[at]];
  if (piece === undefined || spot === undefined) return [];
  const { xMm, sign, rowsBefore } = spot;
  if (piece.outline === undefined) {
    return piece.node === undefined
      ? []
      : nodeShapes(piece.node, [xMm, y], { bus: lane.strip?.bus.id ?? '', cuts: lane.cuts });
  }
  const stem = lane.kind === 'own' ? 0 : stemMm;
  const centre: Point = [xMm, y + sign * (stem + rowsBefore * laneRowMm)];
  const foot: Point = [xMm, centre[1] - sign * laneRadiusMm];
  return [
    ...(lane.kind === 'own' ? [] : stemShapes(lane, piece, [[xMm, y], foot], breaks)),
    ...outlineShapes(piece.outline as Outline, { at: centre, sign }, breaks),
  ];
};

/** Where the balloons of a bus lane stand from which a line leads on down. */
export const tieFeet = (laid: LaidLane, y: number): ReadonlyMap<string, Point> =>
  new Map(
    laid.pieces.flatMap(({ tie, unit }, at): [string, Point][] => {
      const spot = laid.spots[at];
      if (tie !== true || unit === undefined || spot === undefined) return [];
      return [[unit.mark.kit.id, [spot.xMm, y + stemMm + laneRadiusMm]]];
    }),
  );

/** One lane with its line at `yMm`; `feet`: where the lines from the lane above come from. */
export const lyingLane = (
  laid: LaidLane,
  yMm: number,
  { index, breaks, feet }: { index: DrawnBoat; breaks: BreaksOf; feet: ReadonlyMap<string, Point> },
): Shape => {
  const ties = laid.lane.ties.flatMap(({ unit, edge }) => {
    const foot = feet.get(unit);
    return foot === undefined ? [] : [{ xMm: foot[0], edge, line: [foot, [foot[0], yMm]] as const }];
  });
  return {
    kind: 'group',
    label: laid.lane.title.join(', '),
    shapes: [
      ...gutterShapes(laid, yMm, index),
      ...trunkShapes(laid, yMm),
      ...ties.flatMap(({ edge, line }) =>
        codedStrokes(line, { code: laneCode(edge.kind), guessed: false, about: edge.lines }),
      ),
      ...barShapes(laid, yMm, ties),
      ...ties.map(({ xMm, edge }) => teeSquare([xMm, yMm], { sideMm: 1.6, about: edge.lines })),
      ...laid.pieces.flatMap((_, at) => pieceShapes(laid, at, yMm, breaks)),
    ],
  };
};
