import type { PathStep } from './path-data.ts';
import { direction, distanceMm, type Point, stepFrom } from './point.ts';

const waveMm = 2.8;
const heightMm = 0.45;

/** Control points of the cubic that comes nearest to half a sine wave, as shares of its length and height. */
const sineControl = { along: 0.3642, across: 4 / 3 };

const halfWave = (start: Point, heading: Point, half: { lengthMm: number; side: 1 | -1 }): PathStep => {
  const acrossMm = half.side * heightMm * sineControl.across;
  const near = stepFrom(start, heading, { alongMm: half.lengthMm * sineControl.along, acrossMm });
  const far = stepFrom(start, heading, { alongMm: half.lengthMm * (1 - sineControl.along), acrossMm });
  const end = stepFrom(start, heading, { alongMm: half.lengthMm, acrossMm: 0 });
  return ['C', ...near, ...far, ...end];
};

/**
 * A small regular wave along a polyline: the stroke of a length that is only guessed.
 * Every straight part holds a whole number of waves, so it starts and ends on the line itself.
 */
export const wavyLine = (points: readonly Point[]): PathStep[] => {
  const steps: PathStep[] = [];
  for (const [index, end] of points.entries()) {
    const start = points[index - 1];
    if (start === undefined) {
      steps.push(['M', ...end]);
      continue;
    }
    const lengthMm = distanceMm(start, end);
    const heading = direction(start, end);
    const halves = Math.max(2, Math.round(lengthMm / waveMm) * 2);
    for (let half = 0; half < halves; half++) {
      const from = stepFrom(start, heading, { alongMm: (lengthMm * half) / halves, acrossMm: 0 });
      steps.push(halfWave(from, heading, { lengthMm: lengthMm / halves, side: half % 2 === 0 ? 1 : -1 }));
    }
  }
  return steps;
};
