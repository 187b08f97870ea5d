import type { PathStep } from './path-data.ts';
import type { Point } from './point.ts';

/** Enough to ask what lies under a label; a drawing that is cut wants more. */
const coarse = 6;

const cubicAt = (
  from: Point,
  step: readonly [number, number, number, number, number, number],
  share: number,
): Point => {
  const rest = 1 - share;
  const mix = (a: number, b: number, c: number, d: number): number =>
    rest ** 3 * a + 3 * rest ** 2 * share * b + 3 * rest * share ** 2 * c + share ** 3 * d;
  return [mix(from[0], step[0], step[2], step[4]), mix(from[1], step[1], step[3], step[5])];
};

/** A path as straight pieces, each curve cut in so many parts. */
export const flattenPath = (steps: readonly PathStep[], parts = coarse): (readonly [Point, Point])[] => {
  const pieces: (readonly [Point, Point])[] = [];
  let start: Point = [0, 0];
  let at: Point = [0, 0];
  const lineTo = (to: Point): void => {
    pieces.push([at, to]);
    at = to;
  };
  for (const step of steps) {
    if (step[0] === 'C') {
      const from = at;
      const controls = [step[1], step[2], step[3], step[4], step[5], step[6]] as const;
      for (let part = 1; part <= parts; part++) lineTo(cubicAt(from, controls, part / parts));
    } else if (step[0] === 'Z') lineTo(start);
    else if (step[0] === 'L') lineTo([step[1], step[2]]);
    else {
      start = [step[1], step[2]];
      at = start;
    }
  }
  return pieces;
};
