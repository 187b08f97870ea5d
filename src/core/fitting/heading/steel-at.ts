import type { Boat } from '../../boat/boat-schema.ts';
import { headingClearanceM } from '../../facts/heading-figures.ts';
import type { HeadingNear } from '../../heading-shape.ts';
import type { Spot } from '../../power/distance-to-route.ts';
import { hullOutlines, isInside, toEdgeM } from './hull-outline.ts';

/** The plating as a thing near a heading sensor. */
const plating = (distanceM: number, { by, inside }: { by: HeadingNear['by']; inside: boolean }): HeadingNear => {
  const leastM = headingClearanceM('steel');
  const verdict = distanceM < leastM ? 'not' : inside ? 'doubtful' : 'good';
  return { id: 'hull', is: 'steel', distanceM, leastM, by, verdict };
};

/** The plating of a hull of steel at a distance somebody measured: out in the open it is only its distance that counts. */
export const steelOff = ({ material }: Boat['hull'], distanceM: number): HeadingNear[] =>
  material === 'steel' ? [plating(distanceM, { by: 'kind', inside: false })] : [];

/**
 * How far a spot is from the plating of a hull of steel, as her drawing has it: from the deck over it, and below that from
 * deck, bottom and sides. Inside a steel hull no place is better than doubtful. Nothing for other hulls.
 */
export const steelAt = (hull: Boat['hull'], { xM, yM, zM }: Spot): HeadingNear[] => {
  if (hull.material !== 'steel') return [];
  const { side, top } = hullOutlines(hull);
  const inside = side.hull.some((outline) => isInside(outline, xM, zM));
  const distances = [
    ...side.hull.map((outline) => toEdgeM(outline, xM, zM)),
    ...(inside ? top.hull.map((outline) => toEdgeM(outline, xM, yM)) : []),
  ];
  return [plating(Math.min(...distances), { by: 'taken', inside })];
};
