import type { Way } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';

/** How much of the order hangs on each way, in hundredths of the currency; of several answers the dearest. */
export const stakesOf = ({ tape }: Pick<Plan, 'tape'>): ReadonlyMap<string, number> => {
  const stakes = new Map<string, number>();
  for (const { about, atStake } of tape) stakes.set(about, Math.max(atStake, stakes.get(about) ?? 0));
  return stakes;
};

/** The ways on which most of the order hangs first, the others as they stand in the file. */
export const byStake = (ways: readonly Way[], stakes: ReadonlyMap<string, number>): readonly Way[] =>
  [...ways].sort((one, other) => (stakes.get(other.id) ?? 0) - (stakes.get(one.id) ?? 0));
