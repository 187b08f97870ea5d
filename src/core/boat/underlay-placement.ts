import type { Fix, Fixes, Underlay, UnderlayView } from './underlay.ts';

/** A point of a picture, in pixels from its upper left. */
export interface PicturePoint {
  readonly xPx: number;
  readonly yPx: number;
}

/** A point of a view of the boat: metres forward of the transom, and above the waterline or to starboard. */
export interface ViewPoint {
  readonly alongM: number;
  readonly acrossM: number;
}

/**
 * How a picture lies in its view: alongM = a x - b y + alongM0, downM = b x + a y + downM0, with x counted to the left where
 * it is mirrored. A picture counts down from its top; a view from the side counts up, one from above to starboard, which
 * is down on the sheet. a and b are metres a pixel, so that scale = hypot(a, b) and turn = atan2(b, a).
 */
export interface Placement {
  readonly a: number;
  readonly b: number;
  readonly alongM: number;
  readonly downM: number;
  /** 1, or -1 for a mirrored picture */
  readonly flip: 1 | -1;
  /** metres down the sheet for each metre across: -1 from the side, 1 from above */
  readonly down: 1 | -1;
}

const downOf = (view: UnderlayView): 1 | -1 => (view === 'side' ? -1 : 1);

/**
 * The one way of moving, turning and scaling that brings both fixed points of a picture to their places aboard; the
 * quotient of two complex numbers. Source: geometry.
 */
export const underlayPlacement = ({ view, from: one, to: other, mirrored }: Underlay): Placement => {
  const down = downOf(view);
  const flip = mirrored === true ? -1 : 1;
  const [dx, dy] = [flip * (other.xPx - one.xPx), other.yPx - one.yPx];
  const [du, dv] = [other.alongM - one.alongM, down * (other.acrossM - one.acrossM)];
  const square = dx * dx + dy * dy;
  const a = (du * dx + dv * dy) / square;
  const b = (dv * dx - du * dy) / square;
  return {
    a,
    b,
    alongM: one.alongM - (a * flip * one.xPx - b * one.yPx),
    downM: down * one.acrossM - (b * flip * one.xPx + a * one.yPx),
    flip,
    down,
  };
};

/** Where a point of a picture is aboard. */
export const aboardOf = ({ a, b, alongM, downM, flip, down }: Placement, { xPx, yPx }: PicturePoint): ViewPoint => ({
  alongM: a * flip * xPx - b * yPx + alongM,
  acrossM: down * (b * flip * xPx + a * yPx + downM),
});

/** Which point of a picture lies at a point of its view. */
export const pictureOf = ({ a, b, alongM, downM, flip, down }: Placement, at: ViewPoint): PicturePoint => {
  const [u, v] = [at.alongM - alongM, down * at.acrossM - downM];
  const square = a * a + b * b;
  return { xPx: (flip * (a * u + b * v)) / square, yPx: (a * v - b * u) / square };
};

const round = (value: number, to: number): number => Math.round(value / to) * to + 0;

const fixAt = (point: PicturePoint, at: ViewPoint): Fix => ({
  xPx: Number(round(point.xPx, 0.01).toFixed(2)),
  yPx: Number(round(point.yPx, 0.01).toFixed(2)),
  alongM: Number(round(at.alongM, 0.001).toFixed(3)),
  acrossM: Number(round(at.acrossM, 0.001).toFixed(3)),
});

/**
 * How a picture lies when it is new: as long as the boat, its middle at the waterline or on the centreline, until somebody
 * says more.
 */
export const firstFixes = ({
  widthPx,
  heightPx,
  lengthM,
}: {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly lengthM: number;
}): Fixes => ({
  from: fixAt({ xPx: 0, yPx: heightPx / 2 }, { alongM: 0, acrossM: 0 }),
  to: fixAt({ xPx: widthPx, yPx: heightPx / 2 }, { alongM: lengthM, acrossM: 0 }),
});

/**
 * The fixes of a picture scaled so that two of its points are some distance apart: the first stays where it is aboard, the
 * picture keeps its turn, or is turned so that the two lie level.
 *
 * @example scaledFixes(underlay, { points: [mast, transom], apartM: 5.4, level: true })
 */
export const scaledFixes = (
  underlay: Underlay,
  {
    points: [one, other],
    apartM,
    level,
  }: { points: readonly [PicturePoint, PicturePoint]; apartM: number; level: boolean },
): Fixes => {
  const placement = underlayPlacement(underlay);
  const [from, to] = [aboardOf(placement, one), aboardOf(placement, other)];
  const [alongM, acrossM] = [to.alongM - from.alongM, to.acrossM - from.acrossM];
  const nowM = Math.hypot(alongM, acrossM);
  const side = alongM < 0 ? -1 : 1;
  const [along, across] = level || nowM === 0 ? [side, 0] : [alongM / nowM, acrossM / nowM];
  const there = { alongM: from.alongM + along * apartM, acrossM: from.acrossM + across * apartM };
  return { from: fixAt(one, from), to: fixAt(other, there) };
};

/** The fixes of a picture after one of them was moved: the first takes the other along, the other turns and scales about the first. */
export const movedFixes = ({ from, to }: Fixes, { fix, by }: { fix: keyof Fixes; by: ViewPoint }): Fixes => {
  const moved = (one: Fix): Fix => fixAt(one, { alongM: one.alongM + by.alongM, acrossM: one.acrossM + by.acrossM });
  return fix === 'from' ? { from: moved(from), to: moved(to) } : { from, to: moved(to) };
};

/** The same picture where it lies, fixed by two other points of it. */
export const repinned = (underlay: Underlay, [one, other]: readonly [PicturePoint, PicturePoint]): Fixes => {
  const placement = underlayPlacement(underlay);
  return { from: fixAt(one, aboardOf(placement, one)), to: fixAt(other, aboardOf(placement, other)) };
};

/** The fixes of a picture that is mirrored: it keeps its middle and its height, and does not turn over. */
export const mirroredFixes = ({ from, to }: Fixes): Fixes => ({
  from: { ...from, alongM: to.alongM },
  to: { ...to, alongM: from.alongM },
});
