/**
 * A pure function of one object, which nobody changes in place, that is worked out once for it. An edit leaves nearly every part
 * of a boat the very one it was, so what is kept for a part holds from edit to edit.
 *
 * @example const textOf = keptFor((part: object) => JSON.stringify(part))
 */
export const keptFor = <Of extends object, Answer>(find: (of: Of) => Answer): ((of: Of) => Answer) => {
  const known = new WeakMap<Of, { readonly answer: Answer }>();
  return (of) => {
    const kept = known.get(of) ?? { answer: find(of) };
    known.set(of, kept);
    return kept.answer;
  };
};
