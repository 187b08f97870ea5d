import type { Point } from './point.ts';

/** The area within points, mm²; below nothing where they turn right. */
export const pathArea = (points: readonly Point[]): number =>
  points.reduce((sum, [x, y], at) => {
    const [nextX, nextY] = points[(at + 1) % points.length] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
