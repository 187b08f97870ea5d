import { endSquare, pathShape, teeSquare } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { codedStrokes } from '../sheet/coded-strokes.ts';
import type { DrawnBoat } from '../sheet/drawn-boat.ts';
import { lineCode } from '../sheet/line-code.ts';
import type { StripNode } from '../sheet/strip-nodes.ts';
import { stripWords } from '../sheet/strip-words.ts';
import { trunkPieces } from '../sheet/trunk-pieces.ts';
import { laneCode } from './lane-code.ts';
import { type BreaksOf, crossShape, outlineShapes, unitShape } from './lane-row-shapes.ts';
import { laneRadiusMm, laneRowMm, type Outline, outlineOf } from './lane-rows.ts';
import type { Lane, LaneUnit } from './lane-tree.ts';

const lineXMm = 6;
const headXMm = lineXMm + 6 + laneRadiusMm;
const ownXMm = 7;
const titleMm = 7;
const markMm = 5;

interface Entry {
  readonly yMm: number;
  readonly node?: StripNode;
  readonly unit?: LaneUnit;
  readonly outline?: Outline;
}

/** The rows of a lane from its title down. */
const entriesOf = (lane: Lane, index: DrawnBoat, { topMm, widthMm }: { topMm: number; widthMm: number }) => {
  let yMm = topMm + titleMm + (lane.hub === undefined ? 0 : laneRowMm);
  const roomMm = widthMm - 4 - (lane.kind === 'own' ? ownXMm : headXMm);
  const heads = [...lane.heads];
  const nodes: readonly (StripNode | undefined)[] = lane.strip?.nodes ?? lane.heads.map(() => undefined);
  const entries = nodes.map((node): Entry => {
    const unit = node !== undefined && node.mark === undefined ? undefined : heads.shift();
    const outline = unit === undefined ? undefined : outlineOf(unit, index, roomMm);
    const ownMm = outline === undefined ? markMm : laneRowMm;
    const entry = {
      yMm: yMm + ownMm / 2,
      ...(node === undefined ? {} : { node }),
      ...(unit === undefined || outline === undefined ? {} : { unit, outline }),
    };
    yMm += outline === undefined ? markMm : outline.rows.length * laneRowMm;
    return entry;
  });
  return { entries, bottomMm: yMm + 2 };
};

const across = (yMm: number): Point[] => [
  [lineXMm, yMm],
  [headXMm - laneRadiusMm, yMm],
];

const stemShapes = (lane: Lane, { node, unit, yMm }: Entry, breaks: BreaksOf): Shape[] => {
  const at: Point = [lineXMm, yMm];
  if (unit === undefined) {
    const about = [lane.strip?.bus.id ?? '', ...(node?.tee === undefined ? [] : [node.tee])];
    return node?.kind === 'end' ? endSquare(at, { about }) : [teeSquare(at, { about })];
  }
  const crossed = crossShape([headXMm - laneRadiusMm - 1.6, yMm], breaks.get(unit) ?? []);
  const { edge } = unit;
  const isBus = lane.kind === 'bus';
  const about = isBus ? [node?.drop?.id ?? lane.strip?.bus.id ?? ''] : (edge?.lines ?? []);
  const code = isBus ? lineCode.drop : laneCode(edge?.kind ?? 'ethernet');
  const tee = [...(node?.tee === undefined ? [] : [node.tee]), ...unit.mark.about];
  return [...codedStrokes(across(yMm), { code, guessed: false, about }), teeSquare(at, { about: tee }), ...crossed];
};

const lineShapes = (lane: Lane, entries: readonly Entry[], hubYMm: number): Shape[] => {
  if (lane.strip !== undefined) {
    return trunkPieces(lane.strip).flatMap(({ from, about, guessed }) => {
      const line: Point[] = [
        [lineXMm, entries[from]?.yMm ?? 0],
        [lineXMm, entries[from + 1]?.yMm ?? 0],
      ];
      return codedStrokes(line, { code: lineCode.trunk, guessed, about });
    });
  }
  if (lane.hub === undefined) return [];
  const bar: Point[] = [
    [lineXMm, hubYMm + laneRadiusMm],
    [lineXMm, entries.at(-1)?.yMm ?? hubYMm],
  ];
  return [pathShape(polyline(bar), { stroke: { ink: 'ethernet', widthMm: 0.7 }, about: lane.hub.mark.about })];
};

/** One lane from top to bottom, a row for each unit, for a narrow sheet. */
export const uprightLane = (
  lane: Lane,
  { index, breaks, topMm, widthMm }: { index: DrawnBoat; breaks: BreaksOf; topMm: number; widthMm: number },
): { shape: Shape; bottomMm: number } => {
  const { entries, bottomMm } = entriesOf(lane, index, { topMm, widthMm });
  const hubYMm = topMm + titleMm + laneRowMm / 2 - 1;
  const [hub] = lane.hub === undefined ? [] : outlineOf({ ...lane.hub, hangs: [] }, index, widthMm - 10).rows;
  const shapes: Shape[] = [
    {
      kind: 'text',
      xMm: 4,
      yMm: topMm + 4.2,
      text: lane.title.join(lane.kind === 'own' ? ' ' : ', '),
      ...stripWords,
      weight: 'semibold',
      ink: 'ink',
      about: lane.about,
    },
    ...lineShapes(lane, entries, hubYMm),
    ...(hub === undefined ? [] : [unitShape(hub, [lineXMm, hubYMm])]),
    ...entries.flatMap((entry) => (lane.kind === 'own' ? [] : stemShapes(lane, entry, breaks))),
    ...entries.flatMap(({ outline, yMm }) =>
      outline === undefined
        ? []
        : outlineShapes(outline, { at: [lane.kind === 'own' ? ownXMm : headXMm, yMm], sign: 1 }, breaks),
    ),
  ];
  return { shape: { kind: 'group', label: lane.title.join(', '), shapes }, bottomMm };
};
