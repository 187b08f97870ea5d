/** A data pair as a ladder: what lies between the two wires at each spot along the trunk, in order. */
export interface Ladder {
  /** distance of each spot from the first, m */
  readonly atM: readonly number[];
  /** between the wires at each spot, ohm; infinite where nothing is */
  readonly shuntOhm: readonly number[];
  /** of one wire */
  readonly ohmPerM: number;
  /** the stretch, by the spot it begins at, that a wire is broken in */
  readonly openAfter?: number;
}

/** Conductance of all that lies on one side, walking towards the spot that is measured at, siemens. */
const seenFrom = (ladder: Ladder, spots: readonly number[], at: number): number => {
  const { atM, shuntOhm, ohmPerM, openAfter } = ladder;
  let siemens = 0;
  for (const [turn, spot] of spots.entries()) {
    siemens += 1 / (shuntOhm[spot] ?? Number.POSITIVE_INFINITY);
    const next = spots[turn + 1] ?? at;
    const isOpen = openAfter !== undefined && Math.min(spot, next) === openAfter;
    const wireOhm = 2 * ohmPerM * Math.abs((atM[next] ?? 0) - (atM[spot] ?? 0));
    siemens = siemens === 0 || isOpen ? 0 : 1 / (1 / siemens + wireOhm);
  }
  return siemens;
};

/**
 * What a meter reads between the data wires at one spot of the trunk, ohm: R = 1 / (G_left + 1/s + G_right), s the shunt at the
 * spot itself, and on each side G = 1 / (1 / (G_beyond + 1/s) + 2 r d) from the far end on, r ohm/m of one wire and d the
 * stretch in metres (source: computed-bus-ohm). Infinite where nothing lies between the wires.
 *
 * @example ladderOhm({ atM: [0, 100], shuntOhm: [120, 120], ohmPerM: 0.0919 }, 0) // 64.27
 */
export const ladderOhm = (ladder: Ladder, at: number): number => {
  const { shuntOhm } = ladder;
  const left = Array.from({ length: at }, (_, spot) => spot);
  const right = Array.from({ length: shuntOhm.length - at - 1 }, (_, back) => shuntOhm.length - 1 - back);
  const siemens =
    seenFrom(ladder, left, at) + seenFrom(ladder, right, at) + 1 / (shuntOhm[at] ?? Number.POSITIVE_INFINITY);
  return 1 / siemens;
};
