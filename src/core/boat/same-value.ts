/**
 * Whether two JSON values say the same, whatever the order of names; a name that is absent is one that is undefined.
 *
 * @example sameValue({ a: 1, b: [2] }, { b: [2], a: 1 }) // true
 */
export const sameValue = (one: unknown, other: unknown): boolean => {
  if (one === other) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const [of, against] = [
    new Map<string, unknown>(Object.entries(one)),
    new Map<string, unknown>(Object.entries(other)),
  ];
  return [...new Set([...of.keys(), ...against.keys()])].every((name) => sameValue(of.get(name), against.get(name)));
};
