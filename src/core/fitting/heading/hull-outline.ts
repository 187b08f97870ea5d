import type { Boat } from '../../boat/boat-schema.ts';
import { keptFor } from '../../boat/kept-for.ts';
import { type HullPart, hullPattern, type OutlineStep } from '../../facts/hull-patterns.ts';

/** A closed outline as its corners: x and z from the side, x and y from above. */
export type Outline = readonly (readonly [number, number])[];

/** What is inside a boat in the two views: her hull, and the houses on it. */
export interface HullOutlines {
  readonly side: { readonly hull: readonly Outline[]; readonly house: readonly Outline[] };
  readonly top: { readonly hull: readonly Outline[]; readonly house: readonly Outline[] };
}

/** Straight stretches that stand for one curve. */
const stretches = 8;

const alongCurve = ([ax, ay]: readonly [number, number], step: Extract<OutlineStep, readonly ['C', ...unknown[]]>) =>
  Array.from({ length: stretches }, (_, at): [number, number] => {
    const t = (at + 1) / stretches;
    const [b, c, d, e] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t ** 2 * (1 - t), t ** 3];
    return [b * ax + c * step[1] + d * step[3] + e * step[5], b * ay + c * step[2] + d * step[4] + e * step[6]];
  });

/** The closed outlines of a part; one that is left open is closed by the straight way back. */
const outlinesOf = ({ steps }: HullPart): Outline[] => {
  const outlines: [number, number][][] = [];
  for (const step of steps) {
    const now = outlines.at(-1);
    if (step[0] === 'M') outlines.push([[step[1], step[2]]]);
    else if (step[0] === 'L') now?.push([step[1], step[2]]);
    else if (step[0] === 'C') now?.push(...alongCurve(now.at(-1) ?? [0, 0], step));
  }
  return outlines.filter(({ length }) => length > 2);
};

const partsOf = (parts: readonly HullPart[], role: HullPart['role']): Outline[] =>
  parts.filter((part) => part.role === role).flatMap(outlinesOf);

/** The outlines of a boat in both views, worked out once for a hull. */
export const hullOutlines: (hull: Boat['hull']) => HullOutlines = keptFor((hull: Boat['hull']): HullOutlines => {
  const { side, top } = hullPattern(hull);
  return {
    side: { hull: partsOf(side, 'hull'), house: partsOf(side, 'house') },
    top: { hull: partsOf(top, 'hull'), house: partsOf(top, 'house') },
  };
});

/** Whether a point lies inside a closed outline. */
export const isInside = (outline: Outline, x: number, y: number): boolean => {
  let inside = false;
  let before = outline.at(-1);
  for (const corner of outline) {
    const [ax, ay] = before ?? corner;
    const [bx, by] = corner;
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
    before = corner;
  }
  return inside;
};

/** How far a point is from the nearest edge of an outline. */
export const toEdgeM = (outline: Outline, x: number, y: number): number =>
  Math.min(
    ...outline.map(([ax, ay], at) => {
      const [bx, by] = outline[(at + 1) % outline.length] ?? [ax, ay];
      const [dx, dy] = [bx - ax, by - ay];
      const length2 = dx ** 2 + dy ** 2;
      const share = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / length2));
      return Math.hypot(x - ax - share * dx, y - ay - share * dy);
    }),
  );
