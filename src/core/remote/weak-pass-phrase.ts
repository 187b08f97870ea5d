/** Shorter ones are tried through in an afternoon (common practice: long pass phrases). */
const leastLetters = 14;

const bare = (words: string): string => words.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');

/**
 * What is weak about a pass phrase: it has the name of the boat in it, or the number of her radio, both of which every
 * neighbour reads; it is figures alone; it is short. Undefined where none of these holds. It is looked at and kept nowhere.
 *
 * @example weakPassPhrase({ phrase: 'turnstone', known: ['TURNSTONE'] }) // 'known'
 */
export const weakPassPhrase = ({
  phrase,
  known,
}: {
  readonly phrase: string;
  /** names and numbers that stand on the boat or are sent by her */
  readonly known: readonly string[];
}): 'known' | 'figures' | 'short' | undefined => {
  const said = bare(phrase);
  if (known.some((name) => bare(name).length > 2 && said.includes(bare(name)))) return 'known';
  if (/^\d+$/.test(said)) return 'figures';
  return phrase.length < leastLetters ? 'short' : undefined;
};
