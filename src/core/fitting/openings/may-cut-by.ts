import type { Kit } from '../../boat/boat-schema.ts';
import type { Sheet } from '../../boat/sheet.ts';

const isRead = ({ changes = [] }: Kit, part: 'body' | 'cutout'): boolean => {
  const read = changes.filter(({ how, value }) => how !== 'recording' && value !== undefined).map(({ path }) => path);
  return read.includes(part) || ['widthMm', 'heightMm'].every((side) => read.includes(`${part}.${side}`));
};

/**
 * Whether the sizes of a unit may be cut by: they come from its maker’s manual, or its body and its cut-out were read or measured
 * on this very one. Usual sizes of its class are for planning only.
 */
export const mayCutBy = (unit: Kit, sheet: Sheet): boolean =>
  sheet.source === 'manual' || (isRead(unit, 'body') && isRead(unit, 'cutout'));
