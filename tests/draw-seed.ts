/** The seed of every property test that names none of its own, so that two runs of one checkout draw the same. */
const usualSeed = 1;

/**
 * The seed that `FAIRLEAD_SEED` asks for: a whole number of 32 bits, `random` for one that is new in each test, or the usual one.
 *
 * @example drawSeed('42') // { seed: 42 }
 */
export const drawSeed = (asked: string | undefined): { readonly seed?: number } => {
  if (asked === undefined || asked === '') return { seed: usualSeed };
  if (asked === 'random') return {};
  const seed = Number(asked);
  if (seed !== (seed | 0)) throw new Error(`FAIRLEAD_SEED is ${asked}; it can be random or a whole number of 32 bits.`);
  return { seed };
};
