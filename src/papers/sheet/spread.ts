/** One thing to place on a line: where it would like to be, and the least distance to the one before it. */
export interface Spot {
  readonly wishMm: number;
  readonly gapMm: number;
}

/**
 * Places spots in their given order as near to their wishes as the gaps between them allow (least squares),
 * by pooling neighbours that push against each other. All stay between `fromMm` and `toMm` when they fit there.
 *
 * @example spread([{ wishMm: 5, gapMm: 0 }, { wishMm: 5, gapMm: 4 }], { fromMm: 0, toMm: 20 }) // [3, 7]
 */
export const spread = (spots: readonly Spot[], room: { fromMm: number; toMm: number }): number[] => {
  const before: number[] = [];
  let sum = 0;
  for (const [order, spot] of spots.entries()) {
    sum += order === 0 ? 0 : spot.gapMm;
    before.push(sum);
  }
  const pools: { total: number; count: number }[] = [];
  const mean = (pool: { total: number; count: number } | undefined): number =>
    pool === undefined ? -Infinity : pool.total / pool.count;
  for (const [order, spot] of spots.entries()) {
    let pool = { total: spot.wishMm - (before[order] ?? 0), count: 1 };
    while (mean(pools.at(-1)) > mean(pool)) {
      const last = pools.pop() ?? { total: 0, count: 0 };
      pool = { total: pool.total + last.total, count: pool.count + last.count };
    }
    pools.push(pool);
  }
  const most = Math.max(room.fromMm, room.toMm - sum);
  const level = pools.flatMap((pool) =>
    Array.from({ length: pool.count }, () => Math.min(most, Math.max(room.fromMm, mean(pool)))),
  );
  return level.map((value, order) => value + (before[order] ?? 0));
};
