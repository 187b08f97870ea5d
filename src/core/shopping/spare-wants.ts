import { orderFigures } from '../facts/buying.ts';
import type { ShoppingEntry } from '../plan-shape.ts';
import type { Want } from './want.ts';

const isSpared = ({ id, kind }: ShoppingEntry): boolean => kind === 'bus-part' && !id.endsWith('dust-cap');

const spareOf = (entry: ShoppingEntry, count: number, why: string): Want => ({
  id: `spare-${entry.id}`,
  item: `${entry.item}, spare`,
  kind: 'spare',
  by: 'piece',
  count,
  ...(entry.each === undefined ? {} : { each: entry.each }),
  for: entry.for,
  why,
});

/** What is bought beyond the plan: a tee and a terminator of each kind, the longest drop once more, fuses of each rating. */
export const spareWants = (list: readonly ShoppingEntry[]): Want[] => {
  const one = orderFigures.spareOfEach.value;
  const lengthOf = ({ id }: ShoppingEntry): number => Number(/-(\d+)mm$/.exec(id)?.[1] ?? 0);
  const [longest] = list
    .filter((entry) => entry.kind === 'drop' && lengthOf(entry) > 0)
    .sort((a, b) => lengthOf(b) - lengthOf(a));
  return [
    ...list.filter(isSpared).map((entry) => spareOf(entry, one, 'One that fails stops the whole bus.')),
    ...(longest === undefined ? [] : [spareOf(longest, one, 'The longest drop can stand in for any other.')]),
    ...list
      .filter(({ id }) => /^fuse-\d/.test(id))
      .map((entry) => spareOf(entry, orderFigures.spareFuses.value, 'A fuse that blows is replaced by its like.')),
  ];
};
