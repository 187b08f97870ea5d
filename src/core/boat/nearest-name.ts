import { byCodeUnit } from './ids.ts';

/** Letters to add, take out, change or swap with a neighbour to make one word from another (optimal string alignment). */
const editDistance = (from: string, to: string): number => {
  let beforeLast: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= to.length; column += 1) {
      const same = from[row - 1] === to[column - 1];
      const swapped = row > 1 && column > 1 && from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      current.push(
        Math.min(
          (last[column] ?? 0) + 1,
          (current[column - 1] ?? 0) + 1,
          (last[column - 1] ?? 0) + (same ? 0 : 1),
          swapped ? (beforeLast[column - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
    beforeLast = last;
    last = current;
  }
  return last[to.length] ?? 0;
};

/**
 * The known name a person most likely meant, or undefined when none is near: at most one letter in three differs, two at
 * least being allowed in words of four letters or more. Of equally near names the first by code unit. A number has no near name.
 *
 * @example nearestName('lenght', ['length', 'len']) // 'length'
 */
export const nearestName = (given: string, known: Iterable<string>): string | undefined => {
  if (/^\d+$/.test(given)) return undefined;
  const word = given.slice(0, 64).toLowerCase();
  const allowed = word.length < 4 ? 1 : Math.max(2, Math.floor(word.length / 3));
  const near = [...known]
    .filter((name) => Math.abs(name.length - word.length) <= allowed)
    .map((name) => ({ name, distance: editDistance(word, name.toLowerCase()) }))
    .filter(({ distance }) => distance <= allowed)
    .sort((a, b) => a.distance - b.distance || byCodeUnit(a.name, b.name));
  return near[0]?.name;
};
