import type { Point } from '../drawing/point.ts';
import type { Shape } from '../drawing/shapes.ts';
import type { CurveKind } from './curve-kinds.ts';
import type { DrawnBoat } from './drawn-boat.ts';
import { type PlaceGroup, placeGroups, placeRow, placeRowMm } from './place-row.ts';
import type { SheetFrame } from './sheet-frame.ts';
import { stripShapes } from './strip.ts';
import { layStrip, type PlacedStrip } from './strip-layout.ts';
import type { StripOfBus } from './strip-nodes.ts';
import { stripWords } from './strip-words.ts';
import { curveHeightMm, hasCurve, trunkCurve } from './trunk-curve.ts';
import { uprightStrip, uprightStripMm } from './upright-strip.ts';
import type { View } from './view.ts';

/** The strips of all buses, one under the other, each with its places over it and its volts under it. */
interface Block {
  readonly placed: PlacedStrip;
  readonly groups: readonly PlaceGroup[];
  readonly heightMm: number;
}

const blockOf = (strip: StripOfBus, frame: SheetFrame, index: DrawnBoat): Block => {
  const placed = layStrip({ strip, frame, index });
  const groups = placeGroups(placed.nodes, frame.widthMm);
  const curveMm = hasCurve(placed) ? curveHeightMm : 0;
  return { placed, groups, heightMm: placeRowMm(groups) + placed.aboveMm + placed.belowMm + curveMm };
};

/** One strip needs no name; several do. */
const titleMm = (strips: readonly StripOfBus[]): number => (strips.length > 1 ? 6 : 0);

const titleShapes = ({ strips, index }: StackRequest, strip: StripOfBus, topMm: number): Shape[] =>
  strips.length < 2
    ? []
    : [
        {
          kind: 'text',
          xMm: 5,
          yMm: topMm + 4,
          text: index.buses.get(strip.bus.id)?.name ?? strip.bus.id,
          ...stripWords,
          weight: 'semibold',
          ink: 'ink',
          about: [strip.bus.id],
        },
      ];

/** Height of the strips as they lie in this frame. */
export const stripStackMm = (strips: readonly StripOfBus[], frame: SheetFrame, index: DrawnBoat): number =>
  strips.reduce(
    (sum, strip) => sum + (frame.narrow ? uprightStripMm(strip) : blockOf(strip, frame, index).heightMm),
    titleMm(strips) * strips.length,
  );

/** A hair line from each stop of a strip up to its place in the boat as seen from above. */
export type Hair = readonly [Point, Point];

const hairsOf = (groups: readonly PlaceGroup[], topMm: number, known: { index: DrawnBoat; view: View }): Hair[] => {
  const rowMm = placeRowMm(groups);
  const mostLines = Math.max(1, ...groups.map((group) => group.words.length));
  return groups.flatMap((group): Hair[] => {
    const place = known.index.places.get(group.place);
    if (place === undefined) return [];
    const lift = ((mostLines - group.words.length) / mostLines) * (rowMm - 2.8);
    return [[known.view.at(place), [group.middleMm, topMm + lift]]];
  });
};

export interface StripStack {
  readonly shapes: readonly Shape[];
  readonly hairs: readonly Hair[];
  readonly bottomMm: number;
  /** numbers that have their words on a strip */
  readonly named: ReadonlySet<number>;
}

interface StackRequest {
  readonly strips: readonly StripOfBus[];
  readonly frame: SheetFrame;
  readonly index: DrawnBoat;
  readonly view: View;
  readonly curve: CurveKind;
}

const lyingStrips = (request: StackRequest): StripStack => {
  const { strips, frame, index, view } = request;
  let topMm = frame.belowMm;
  const shapes: Shape[] = [];
  const hairs: Hair[] = [];
  const named = new Set<number>();
  for (const [order, strip] of strips.entries()) {
    const { placed, groups, heightMm } = blockOf(strip, frame, index);
    shapes.push(...titleShapes(request, strip, topMm));
    topMm += titleMm(strips);
    // hair lines only from the first: those of a second strip would cross it
    if (order === 0) hairs.push(...hairsOf(groups, topMm, { index, view }));
    const trunkYMm = topMm + placeRowMm(groups) + placed.aboveMm;
    shapes.push(placeRow(groups, topMm), stripShapes({ placed, boat: index.boat, trunkYMm }));
    const curve = trunkCurve({ placed, kind: request.curve, topMm: trunkYMm + placed.belowMm, widthMm: frame.widthMm });
    if (curve !== undefined) shapes.push(curve);
    for (const node of placed.nodes) if (node.mark !== undefined && node.words.length > 0) named.add(node.mark.number);
    topMm += heightMm;
  }
  return { shapes, hairs, bottomMm: topMm, named };
};

const uprightStrips = (request: StackRequest): StripStack => {
  const { strips, frame, index } = request;
  let topMm = frame.belowMm;
  const shapes: Shape[] = [];
  for (const strip of strips) {
    shapes.push(...titleShapes(request, strip, topMm));
    topMm += titleMm(strips);
    shapes.push(uprightStrip({ strip, boat: index.boat, topMm, widthMm: frame.widthMm, curve: request.curve }));
    topMm += uprightStripMm(strip);
  }
  const named = new Set(strips.flatMap((strip) => strip.nodes.flatMap((node) => node.mark?.number ?? [])));
  return { shapes, hairs: [], bottomMm: topMm, named };
};

/** Draws the strips of all buses under the views, lying along the boat or, on a narrow sheet, from top to bottom. */
export const stripStack = (request: StackRequest): StripStack =>
  request.frame.narrow ? uprightStrips(request) : lyingStrips(request);
