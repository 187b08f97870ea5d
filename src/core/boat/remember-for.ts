import { remember } from './remember.ts';

/**
 * As `remember`, for what is asked of one object, which nobody changes in place: its answers are kept as long as it is, and
 * the key tells the rest.
 *
 * @example const changed = rememberFor({ most: 16, keyOf: (changes) => JSON.stringify(changes), find: applyChanges })
 */
export const rememberFor = <Of extends object, Asked, Answer>({
  most,
  keyOf,
  find,
}: {
  readonly most: number;
  readonly keyOf: (asked: Asked) => string;
  readonly find: (of: Of, asked: Asked) => Answer;
}): ((of: Of, asked: Asked) => Answer) => {
  const known = new WeakMap<Of, (asked: Asked) => Answer>();
  return (of, asked) => {
    const own = known.get(of) ?? remember({ most, keyOf, find: (one: Asked) => find(of, one) });
    known.set(of, own);
    return own(asked);
  };
};
