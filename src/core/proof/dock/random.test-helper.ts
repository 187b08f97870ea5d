/** Numbers from nothing to one. */
export type Random = () => number;

/** A generator that gives the same numbers for the same seed (a linear congruence; Numerical Recipes). */
export const seeded = (seed: number): Random => {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
};

export const between = (random: Random, least: number, most: number): number => least + (most - least) * random();
export const whole = (random: Random, least: number, most: number): number =>
  Math.floor(between(random, least, most + 1));
/** Evenly spread over the orders of size. */
export const logBetween = (random: Random, least: number, most: number): number =>
  Math.exp(between(random, Math.log(least), Math.log(most)));
