import type { BoatIndex } from '../boat/boat-index.ts';
import type { Place } from '../boat/boat-schema.ts';
import { jointsKeptFrom } from '../facts/mast-work.ts';
import type { LineEntry } from '../plan-shape.ts';
import { wayLengths } from '../ways/way-lengths.ts';

/** A joint of two pieces of a line: the way it falls in, and whether that is wet. */
export interface LineJoint {
  readonly way: string;
  readonly isWet: boolean;
}

/** More pieces than this are joined in the order they come: every order of them would be too many to try. */
const mostTried = 5;

const wet: ReadonlySet<Place['exposure']> = new Set(jointsKeptFrom.exposures);

/** A way is wet where it is entered so, or where both its ends are: then all of it lies there. */
const isWetWay = ({ ways, places }: BoatIndex, id: string): boolean => {
  const way = ways.get(id);
  if (way?.exposure !== undefined) return wet.has(way.exposure);
  return way?.ends.every((end) => wet.has(places.get(end)?.exposure ?? 'dry')) === true;
};

function* ordersOf(pieces: readonly number[]): Generator<readonly number[]> {
  if (pieces.length < 2) {
    yield pieces;
    return;
  }
  for (const [at, first] of pieces.entries()) {
    for (const rest of ordersOf(pieces.toSpliced(at, 1))) yield [first, ...rest];
  }
}

const jointsFor = (
  index: BoatIndex,
  line: LineEntry,
  pieces: readonly number[],
  endsMm: readonly number[],
): LineJoint[] => {
  let atMm = 0;
  return pieces.slice(0, -1).map((mm) => {
    atMm += mm;
    const at = endsMm.findIndex((endMm) => atMm <= endMm);
    const way = line.ways[at < 0 ? line.ways.length - 1 : at] ?? '';
    return { way, isWet: isWetWay(index, way) };
  });
};

/**
 * Where the pieces of a line are joined, in the order of pieces that puts the fewest joints in the wet, of those the first.
 * Pieces are reckoned from the first end, the tail there included; nothing for a line of one piece.
 */
export const lineJoints = (index: BoatIndex, line: LineEntry): readonly LineJoint[] => {
  const pieces = (line.pieces ?? []).map(({ lengthM }) => Math.round(lengthM * 1000));
  if (pieces.length < 2 || line.ways.length === 0) return [];
  const lengths = wayLengths({ ways: index.boat.ways, places: index.places });
  const onWaysMm = line.ways.reduce((sum, way) => sum + (lengths.get(way)?.longestMm ?? 0), 0);
  const tailMm = Math.max(0, Math.round(line.longestM * 1000) - onWaysMm) / 2;
  let atMm = tailMm;
  const endsMm = line.ways.map((way) => {
    atMm += lengths.get(way)?.longestMm ?? 0;
    return atMm;
  });
  const wetIn = (joints: readonly LineJoint[]): number => joints.filter(({ isWet }) => isWet).length;
  let best = jointsFor(index, line, pieces, endsMm);
  if (pieces.length > mostTried) return best;
  for (const order of ordersOf(pieces)) {
    const joints = jointsFor(index, line, order, endsMm);
    if (wetIn(joints) < wetIn(best)) best = joints;
  }
  return best;
};
