import type { Place, Way } from '../boat/boat-schema.ts';
import { lengthMm } from '../boat/measure.ts';

/** Lengths of a way, or of a tail, in whole millimetres; `guessed` where nobody has measured it. */
export interface WayLength {
  readonly mm: number;
  readonly longestMm: number;
  readonly guessed: boolean;
}

/**
 * Straight line between two places, in millimetres rounded up.
 *
 * @example straightLineMm(helm, panel) // 1540
 */
export const straightLineMm = (one: Place, other: Place): number => {
  const [alongM, acrossM, upM] = [one.xM - other.xM, one.yM - other.yM, one.zM - other.zM];
  const straightM = Math.sqrt(alongM * alongM + acrossM * acrossM + upM * upM);
  // A trap: 3, 4 and 5 m must not become 5001 mm because a decimal is not exact in binary.
  return Math.ceil(straightM * 1000 - 1e-6);
};

/**
 * The lengths of every way by id, least 1 mm. A way entered shorter than the straight line between its places counts as
 * that straight line, in its nominal length and in its longest. A way with an unknown place is left out.
 */
export const wayLengths = ({
  ways,
  places,
}: {
  readonly ways: readonly Way[];
  readonly places: ReadonlyMap<string, Place>;
}): ReadonlyMap<string, WayLength> => {
  const lengths = new Map<string, WayLength>();
  for (const way of ways) {
    const [one, other] = way.ends.map((end) => places.get(end));
    if (one === undefined || other === undefined) continue;
    const { nominalMm, longestMm } = lengthMm(way.length);
    const leastMm = Math.max(1, straightLineMm(one, other));
    lengths.set(way.id, {
      mm: Math.max(nominalMm, leastMm),
      longestMm: Math.max(longestMm, leastMm),
      guessed: way.length.how === 'guessed',
    });
  }
  return lengths;
};
