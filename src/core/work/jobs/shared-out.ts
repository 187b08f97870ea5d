/**
 * A whole number shared out by weights into whole numbers that add up to it: each gets its share rounded down, and what is left
 * goes one each to the largest remainders, earlier ones first. No weight at all counts as equal weights.
 *
 * @example sharedOut(100, [1, 1, 1]) // [34, 33, 33]
 */
export const sharedOut = (whole: number, weights: readonly number[]): number[] => {
  const given = weights.reduce((sum, weight) => sum + weight, 0);
  const parts = given > 0 ? weights : weights.map(() => 1);
  const sum = given > 0 ? given : parts.length;
  const exact = parts.map((weight) => (whole * weight) / sum);
  const floors = exact.map((part) => Math.floor(part));
  const left = whole - floors.reduce((all, part) => all + part, 0);
  const order = exact
    .map((part, at) => ({ at, rest: part - (floors[at] ?? 0) }))
    .sort((one, other) => other.rest - one.rest || one.at - other.at)
    .slice(0, left)
    .map(({ at }) => at);
  const lucky = new Set(order);
  return floors.map((part, at) => part + (lucky.has(at) ? 1 : 0));
};
