/**
 * Mean of speeds run to and fro in a stream that changes: v = sum C(n-1, k) v_k / 2^(n-1), v_k the speeds in the order they were
 * run, knots. Two runs weigh 1 1, three 1 2 1, four 1 3 3 1: a stream that changes evenly falls out. Runs follow one another
 * after equal pauses. Undefined without a run.
 *
 * @example meanOfMeans([7, 5.2, 6.4]) // 5.95
 */
export const meanOfMeans = (speedsKn: readonly number[]): number | undefined => {
  let means = [...speedsKn];
  while (means.length > 1) means = means.slice(1).map((speed, at) => (speed + (means[at] ?? speed)) / 2);
  return means[0];
};
