/**
 * A pure function that keeps its latest answers by a key that tells all it looks at, the longest unused going first. Equal
 * keys must mean equal answers, so that what is kept changes nothing but the time.
 *
 * @example const layoutOf = remember({ most: 16, keyOf: ({ hash }) => hash, find: search })
 */
export const remember = <Asked, Answer>({
  most,
  keyOf,
  find,
}: {
  readonly most: number;
  readonly keyOf: (asked: Asked) => string;
  readonly find: (asked: Asked) => Answer;
}): ((asked: Asked) => Answer) => {
  const known = new Map<string, { readonly answer: Answer }>();
  return (asked) => {
    const key = keyOf(asked);
    const kept = known.get(key) ?? { answer: find(asked) };
    known.delete(key);
    known.set(key, kept);
    for (const oldest of known.keys()) {
      if (known.size <= most) break;
      known.delete(oldest);
    }
    return kept.answer;
  };
};
