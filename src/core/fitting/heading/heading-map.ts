import type { HeadingNear } from '../../heading-shape.ts';
import type { Spot } from '../../power/distance-to-route.ts';
import { type HeadingInput, headingField } from './heading-field.ts';
import { headingJudge } from './heading-judge.ts';
import { type HullOutlines, hullOutlines, isInside, type Outline } from './hull-outline.ts';

/** A stretch of one row of the map that is judged alike: along the boat, and in the second measure of the view. */
export interface HeadingRun {
  readonly fromM: number;
  readonly toM: number;
  readonly lowM: number;
  readonly highM: number;
  readonly verdict: HeadingNear['verdict'];
  /** what limits it; absent where nothing does */
  readonly by?: string;
}

/** One view of the map: from the side on the centreline, from above at one height. */
export interface HeadingMapView {
  readonly view: 'side' | 'top';
  /** to starboard for the view from the side, over the water for the one from above */
  readonly atM: number;
  readonly runs: readonly HeadingRun[];
}

/** Where a heading sensor may go: two views, and everything that limits them, what limits most of them first. */
export interface HeadingMap {
  readonly views: readonly HeadingMapView[];
  readonly limits: readonly Pick<HeadingNear, 'id' | 'is' | 'leastM' | 'by'>[];
}

/** A little above the water, where no sensor says how high. */
const usualHeightM = 0.3;
/** The map has about so many cells along the boat. */
const cellsAlong = 72;

const boxOf = (outlines: readonly Outline[]) => {
  const points = outlines.flat();
  return {
    fromM: Math.min(...points.map(([x]) => x)),
    toM: Math.max(...points.map(([x]) => x)),
    lowM: Math.min(...points.map(([, y]) => y)),
    highM: Math.max(...points.map(([, y]) => y)),
  };
};

/** Whether a spot is in the hull, or in one of the houses on it, as both views have them. */
const aboard =
  ({ side, top }: HullOutlines) =>
  ({ xM, yM, zM }: Spot): boolean =>
    (['hull', 'house'] as const).some(
      (part) =>
        side[part].some((outline) => isInside(outline, xM, zM)) &&
        top[part].some((outline) => isInside(outline, xM, yM)),
    );

interface ViewAsked {
  readonly view: 'side' | 'top';
  readonly atM: number;
  readonly outlines: readonly Outline[];
  readonly isAboard: (at: Spot) => boolean;
  readonly cellM: number;
}

/** The rows of one view from below, each as runs of cells judged alike. */
const runsOf = (
  { view, atM, outlines, isAboard, cellM }: ViewAsked,
  judge: (at: Spot) => HeadingNear | undefined,
  count: (near: HeadingNear) => void,
): HeadingRun[] => {
  const box = boxOf(outlines);
  const runs: HeadingRun[] = [];
  for (let lowM = box.lowM; lowM < box.highM; lowM += cellM) {
    const second = lowM + cellM / 2;
    let last: HeadingRun | undefined;
    for (let fromM = box.fromM; fromM < box.toM; fromM += cellM) {
      const xM = fromM + cellM / 2;
      const at = view === 'side' ? { xM, yM: atM, zM: second } : { xM, yM: second, zM: atM };
      if (!isAboard(at)) {
        last = undefined;
        continue;
      }
      const near = judge(at);
      if (near !== undefined) count(near);
      const verdict = near?.verdict ?? 'good';
      if (last !== undefined && last.verdict === verdict && last.by === near?.id) {
        last = { ...last, toM: fromM + cellM };
        runs[runs.length - 1] = last;
      } else {
        last = {
          fromM,
          toM: fromM + cellM,
          lowM,
          highM: lowM + cellM,
          verdict,
          ...(near === undefined ? {} : { by: near.id }),
        };
        runs.push(last);
      }
    }
  }
  return runs;
};

/**
 * Where a heading sensor may go aboard: inside hull and houses, from the side on the centreline, from above at the height of
 * the sensor asked for, else a little above the water. Every cell is judged as a single spot is. Takes some hundredths of a
 * second, so it is only worked out when somebody wants to see it.
 */
export const headingMap = (input: HeadingInput, unit?: string): HeadingMap => {
  const { hull } = input.index.boat;
  const judge = headingJudge(headingField(input), unit);
  const outlines = hullOutlines(hull);
  const place = input.index.places.get(input.index.kit.get(unit ?? '')?.place ?? '');
  const cellM = hull.lengthM / cellsAlong;
  const cells = new Map<string, { readonly near: HeadingNear; readonly cells: number }>();
  const count = (near: HeadingNear): void => {
    cells.set(near.id, { near, cells: (cells.get(near.id)?.cells ?? 0) + 1 });
  };
  const shared = { isAboard: aboard(outlines), cellM };
  const side = { view: 'side' as const, atM: 0, outlines: [...outlines.side.hull, ...outlines.side.house], ...shared };
  const top = { view: 'top' as const, atM: place?.zM ?? usualHeightM, outlines: outlines.top.hull, ...shared };
  const views = [side, top].map((asked): HeadingMapView => {
    const { view, atM } = asked;
    return { view, atM, runs: runsOf(asked, judge, count) };
  });
  return {
    views,
    limits: [...cells.values()]
      .sort((one, other) => other.cells - one.cells || (one.near.id < other.near.id ? -1 : 1))
      .map(({ near: { id, is, leastM, by } }) => ({ id, is, leastM, by })),
  };
};
