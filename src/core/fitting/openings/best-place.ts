import type { FitEntry, MmShape, Side } from '../../fits-shape.ts';
import { sides } from '../../fits-shape.ts';
import { edgeDistanceMm } from './edge-distance.ts';
import { grownShape } from './grown-shape.ts';
import { offsetsOver } from './offsets-over.ts';
import type { Point } from './point.ts';
import { shapeAt } from './shape-at.ts';
import { shapeBounds } from './shape-bounds.ts';
import { shapePoints } from './shape-points.ts';
import { sticksOutMm, touchingMm } from './sticks-out.ts';

/** One unit over one hole, each about its own middle, and what is round them. */
export interface SetOver {
  readonly hole: MmShape;
  readonly cut: MmShape;
  readonly bezel: MmShape;
  readonly landMm: number;
  /** its screws from its own middle, with the distance each wants from any hole */
  readonly screws: readonly { readonly at: Point; readonly needMm: number }[];
  /** from the hole to the free edge of the panel */
  readonly edgesMm: Partial<Readonly<Record<Side, number>>>;
  readonly edgeLeastMm: number;
  /** what stands in the way of its body, on the panel */
  readonly inTheWay: readonly MmShape[];
  /** it is set in a plate over the hole, whatever the bezel would cover */
  readonly onPlate?: boolean;
}

type Kind = Extract<NonNullable<FitEntry['verdict']>, 'as-it-is' | 'enlarge' | 'plate'>;

export interface PlaceOver {
  readonly setOff: Point;
  readonly kind: Kind;
  readonly case: NonNullable<FitEntry['case']>;
}

/** How much solid panel is left to a free edge, once it is cut. */
export const marginLeft = (over: Pick<SetOver, 'hole' | 'edgesMm'>, cut: MmShape, side: Side): number | undefined => {
  const edge = over.edgesMm[side];
  if (edge === undefined) return undefined;
  const [own, was] = [shapeBounds(cut)[side], shapeBounds(over.hole)[side]];
  return edge - Math.max(0, side === 'left' || side === 'below' ? was - own : own - was);
};

/** By how much two shapes lie over each other, by their extents; at most nothing where they do not. */
export const overlapMm = (one: MmShape, other: MmShape): number => {
  const [a, b] = [shapeBounds(one), shapeBounds(other)];
  return Math.min(
    Math.min(a.right, b.right) - Math.max(a.left, b.left),
    Math.min(a.above, b.above) - Math.max(a.below, b.below),
  );
};

interface Tried extends PlaceOver {
  /** what counts, the gravest first: no room, what has to be done, screws and margins that lack, panel cut away under a plate, how far off */
  readonly score: readonly number[];
}

const better = (one: readonly number[], other: readonly number[]): boolean => {
  const at = one.findIndex((value, n) => value !== other[n]);
  return at >= 0 && (one[at] ?? 0) < (other[at] ?? 0);
};

const kinds: readonly Kind[] = ['as-it-is', 'enlarge', 'plate'];

interface Holds {
  readonly hides: boolean;
  readonly passes: boolean;
  readonly cuts: boolean;
}

const kindOf = ({ onPlate }: SetOver, { hides, passes, cuts }: Holds): Kind => {
  if (onPlate === true || !(hides || cuts)) return 'plate';
  return hides && passes ? 'as-it-is' : 'enlarge';
};

/** The parts of a search that stay as they are from try to try. */
const prepared = (over: SetOver) => ({
  over,
  holePoints: shapePoints(over.hole),
  cutPoints: shapePoints(over.cut),
  land: grownShape(over.bezel, -over.landMm),
});

const moved = (points: readonly Point[], [x, y]: Point): Point[] => points.map(([ownX, ownY]) => [ownX + x, ownY + y]);

const tried = ({ over, holePoints, cutPoints, land }: ReturnType<typeof prepared>, setOff: Point): Tried => {
  const cut = shapeAt(over.cut, setOff);
  // what is inside stays inside when both are moved back by the same
  const back = moved(holePoints, [-setOff[0], -setOff[1]]);
  const insideCut = sticksOutMm(back, over.cut) <= touchingMm;
  const covered = sticksOutMm(back, land) <= touchingMm;
  const passes = Math.max(0, sticksOutMm(moved(cutPoints, setOff), over.hole));
  const lacking = over.screws.map(({ at: [x, y], needMm }) => {
    const at: Point = [x + setOff[0], y + setOff[1]];
    return Math.max(0, needMm - Math.min(edgeDistanceMm(over.hole, at), edgeDistanceMm(cut, at)));
  });
  const screwsHold = lacking.every((mm) => mm <= touchingMm);
  const kind = kindOf(over, {
    hides: covered && screwsHold,
    passes: passes <= touchingMm,
    cuts: screwsHold && insideCut,
  });
  const margins = sides.flatMap((side) => marginLeft(over, cut, side) ?? []);
  const noRoom = margins.some((left) => left < 0) || over.inTheWay.some((shape) => overlapMm(shape, cut) > touchingMm);
  const short = margins.reduce((sum, left) => sum + Math.max(0, over.edgeLeastMm - left), 0);
  return {
    setOff,
    kind,
    case: noRoom ? 'no-room' : insideCut ? 'inside-cutout' : covered ? 'under-bezel' : 'shows',
    score: [
      noRoom ? 1 : 0,
      kinds.indexOf(kind),
      Math.round(short * 1000),
      kind === 'plate' ? Math.round(passes * 1000) : 0,
      setOff[0] ** 2 + setOff[1] ** 2,
    ],
  };
};

/** The least that can have to be done, by the sizes alone. */
const leastKind = ({ hole, cut, bezel, landMm, onPlate }: SetOver): Kind => {
  if (onPlate === true) return 'plate';
  const fits = (one: MmShape, other: MmShape, byMm = 0): boolean =>
    one.widthMm <= other.widthMm - byMm + touchingMm && one.heightMm <= other.heightMm - byMm + touchingMm;
  if (fits(cut, hole)) return fits(hole, bezel, 2 * landMm) ? 'as-it-is' : fits(hole, cut) ? 'enlarge' : 'plate';
  return fits(hole, cut) || fits(hole, bezel, 2 * landMm) ? 'enlarge' : 'plate';
};

const isBest = ({ kind, score: [noRoom, , short, passes] }: Tried, least: Kind): boolean =>
  kind === least && noRoom === 0 && short === 0 && passes === 0;

/**
 * Where a unit is set best over an old hole: of all places on a grid of whole millimetres that could be, the one that needs least
 * to be done, keeps its margins, and lies nearest to the middle of the hole. Exact on that grid: every place is tried.
 */
export const bestPlace = (over: SetOver): PlaceOver => {
  const ready = prepared(over);
  const least = leastKind(over);
  let best: Tried | undefined;
  for (const setOff of offsetsOver(over)) {
    const next = tried(ready, setOff);
    if (best === undefined || better(next.score, best.score)) best = next;
    if (isBest(next, least)) break;
  }
  const { setOff, kind, case: found } = best ?? tried(ready, [0, 0]);
  return { setOff, kind, case: found };
};
