import type { BoatIndex } from '../boat/boat-index.ts';
import type { Kit, LineKind } from '../boat/boat-schema.ts';
import { lengthMm } from '../boat/measure.ts';
import type { Sheet } from '../boat/sheet.ts';
import { defaultTail } from '../facts/defaults.ts';
import type { WayLength } from './way-lengths.ts';

/**
 * The cable between a unit's place and its plug, in millimetres: what was entered for the unit, else the usual tail for
 * this kind of line. A usual tail is an allowance, cut to length on the spot: it is no guess, and no doubt is laid on top.
 *
 * @example tailOf({ index, kit: 'display', kind: 'drop' }) // { mm: 600, longestMm: 700, guessed: false }
 */
export const tailOf = ({
  index,
  kit,
  kind,
}: {
  readonly index: BoatIndex;
  readonly kit: string;
  readonly kind: LineKind;
}): WayLength => {
  const entered = index.kit.get(kit)?.tail;
  if (entered !== undefined) return enteredTail(entered);
  const mm = Math.round(usualTail({ kind, sheet: index.sheetOf.get(kit) }).value * 1000);
  return { mm, longestMm: mm, guessed: false };
};

const enteredTail = (tail: NonNullable<Kit['tail']>): WayLength => {
  const { nominalMm, longestMm } = lengthMm(tail);
  return { mm: nominalMm, longestMm, guessed: tail.how === 'guessed' };
};

const usualTail = ({ kind, sheet }: { readonly kind: LineKind; readonly sheet: Sheet | undefined }) => {
  if (kind === 'feed') return defaultTail.dc;
  if (kind === 'pair') return defaultTail.nmea0183;
  return sheet?.cutout === undefined ? defaultTail.anyUnit : defaultTail.flushUnit;
};
