import type { Rule } from '../rule.ts';

/** A NAME is a device's own for life; two units with one means one was entered twice, or copied. */
export const sameNameTwice: Rule = {
  id: 'identities/same-name-twice',
  level: 'fault',
  title: 'Two units have the same NAME.',
  sources: ['messages-conflicts'],
  check: ({ index: { boat } }) => {
    const owners = new Map<string, string[]>();
    for (const { id, identity } of boat.kit) {
      if (identity !== undefined) owners.set(identity, [...(owners.get(identity) ?? []), id]);
    }
    const nameOf = new Map(boat.kit.map(({ id, name }) => [id, name]));
    return [...owners.values()]
      .filter((units) => units.length > 1)
      .map((units) => ({
        about: units,
        says: `${units.map((id) => nameOf.get(id) ?? id).join(' and ')} have the same NAME, the 64-bit identity on the bus. No two devices share one, so one of them is entered twice or was copied.`,
        cure: 'Take the NAME off the one that is not this very unit, or take the double out.',
      }));
  },
};
