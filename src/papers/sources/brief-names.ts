/** The first parts of a name, as many as there are commas before one more. */
const headsOf = (name: string): string[] => {
  const parts = name.split(', ');
  return parts.map((_, at) => parts.slice(0, at + 1).join(', '));
};

/**
 * Names of units for a narrow column: as much of each, up to a comma, as no other unit’s name begins with too.
 *
 * @example briefNames(new Map([['a', { name: 'display, 12 V' }], ['b', { name: 'radio, old' }]])).get('a') // { name: 'display' }
 */
export const briefNames = (
  kit: ReadonlyMap<string, { readonly name: string }>,
): ReadonlyMap<string, { readonly name: string }> => {
  const counts = new Map<string, number>();
  for (const { name } of kit.values()) for (const head of headsOf(name)) counts.set(head, (counts.get(head) ?? 0) + 1);
  return new Map(
    [...kit].map(([id, { name }]) => [id, { name: headsOf(name).find((head) => counts.get(head) === 1) ?? name }]),
  );
};
