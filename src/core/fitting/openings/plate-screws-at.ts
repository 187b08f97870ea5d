import { plateScrews } from '../../facts/opening-figures.ts';
import type { MmShape, PlateEntry } from '../../fits-shape.ts';

/** Even steps of at most the most that screws are apart, from one corner screw to the next. */
const steps = (lengthMm: number): number[] => {
  const count = Math.max(1, Math.ceil(lengthMm / plateScrews.apartMost.value));
  return Array.from({ length: count + 1 }, (_, at) => (lengthMm * at) / count - lengthMm / 2);
};

/** The screws that hold a plate of some size, from its middle: one in each corner, the rest evenly between, row by row. */
export const plateScrewsAt = ({ widthMm, heightMm }: Pick<MmShape, 'widthMm' | 'heightMm'>): PlateEntry['screws'] => {
  const inside = 2 * plateScrews.fromEdge.value;
  const across = steps(widthMm - inside);
  const up = steps(heightMm - inside);
  return up.flatMap((yMm, row) =>
    across
      .filter((_, at) => row === 0 || row === up.length - 1 || at === 0 || at === across.length - 1)
      .map((xMm) => ({ xMm, yMm, holeMm: plateScrews.holeMm.value })),
  );
};
