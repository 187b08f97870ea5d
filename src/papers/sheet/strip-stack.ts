import type { BoatIndex } from '../../core/boat/boat-index.ts';
import type { Point } from '../drawing/point.ts';
import type { Shape } from '../drawing/shapes.ts';
import { type PlaceGroup, placeGroups, placeRow, placeRowMm } from './place-row.ts';
import type { SheetFrame } from './sheet-frame.ts';
import { stripShapes } from './strip.ts';
import { layStrip, type PlacedStrip } from './strip-layout.ts';
import type { StripOfBus } from './strip-nodes.ts';
import type { View } from './view.ts';
import { curveHeightMm, hasVolts, voltsCurve } from './volts-curve.ts';

/** The strips of all buses, one under the other, each with its places over it and its volts under it. */
interface Block {
  readonly placed: PlacedStrip;
  readonly groups: readonly PlaceGroup[];
  readonly heightMm: number;
}

const blockOf = (strip: StripOfBus, frame: SheetFrame, index: BoatIndex): Block => {
  const placed = layStrip({ strip, frame, index });
  const groups = placeGroups(placed.nodes, frame.widthMm);
  const curveMm = hasVolts(placed) ? curveHeightMm : 0;
  return { placed, groups, heightMm: placeRowMm(groups) + placed.aboveMm + placed.belowMm + curveMm };
};

/** Height of the strips as they lie in this frame. */
export const stripStackMm = (strips: readonly StripOfBus[], frame: SheetFrame, index: BoatIndex): number =>
  strips.reduce((sum, strip) => sum + blockOf(strip, frame, index).heightMm, 0);

/** A hair line from each stop of a strip up to its place in the boat as seen from above. */
export type Hair = readonly [Point, Point];

const hairsOf = (block: Block, topMm: number, known: { index: BoatIndex; view: View }): Hair[] => {
  const rowMm = placeRowMm(block.groups);
  const mostLines = Math.max(1, ...block.groups.map((group) => group.words.length));
  return block.groups.flatMap((group): Hair[] => {
    const place = known.index.places.get(group.place);
    if (place === undefined) return [];
    const lift = ((mostLines - group.words.length) / mostLines) * (rowMm - 2.8);
    return [[known.view.at(place), [group.middleMm, topMm + lift]]];
  });
};

/** Draws the strips from `frame.belowMm` down; hair lines only from the first, for a second would cross it. */
export const stripStack = ({
  strips,
  frame,
  index,
  view,
}: {
  strips: readonly StripOfBus[];
  frame: SheetFrame;
  index: BoatIndex;
  view: View;
}): { shapes: Shape[]; hairs: Hair[]; bottomMm: number } => {
  let topMm = frame.belowMm;
  const shapes: Shape[] = [];
  const hairs: Hair[] = [];
  for (const [order, strip] of strips.entries()) {
    const block = blockOf(strip, frame, index);
    if (order === 0) hairs.push(...hairsOf(block, topMm, { index, view }));
    const trunkYMm = topMm + placeRowMm(block.groups) + block.placed.aboveMm;
    shapes.push(placeRow(block.groups, topMm), stripShapes({ placed: block.placed, boat: index.boat, trunkYMm }));
    const curve = voltsCurve({ placed: block.placed, topMm: trunkYMm + block.placed.belowMm, widthMm: frame.widthMm });
    if (curve !== undefined) shapes.push(curve);
    topMm += block.heightMm;
  }
  return { shapes, hairs, bottomMm: topMm };
};
