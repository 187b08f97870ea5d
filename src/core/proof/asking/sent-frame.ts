import { askingFigures } from '../../facts/listening-figures.ts';
import { buildCanId } from '../readers/can-id.ts';

/** One frame that Fairlead sends, and what it is in words. */
export interface SentFrame {
  readonly id: number;
  readonly data: Uint8Array;
  readonly says: string;
}

export const addressClaim = 60_928;
export const isoRequest = 59_904;
/** The address of who holds none, and of all. */
export const nullAddress = askingFigures.nullAddress.value;
export const everyone = askingFigures.everyone.value;

const priority = 6;

/** A request for one message, to one device or to everyone (source: pgn-database). */
export const requestFrame = ({
  pgn,
  from,
  to,
  says,
}: {
  pgn: number;
  from: number;
  to: number;
  says: string;
}): SentFrame => ({
  id: buildCanId({ priority, pgn: isoRequest, source: from, destination: to }),
  data: Uint8Array.of(pgn & 0xff, (pgn >>> 8) & 0xff, (pgn >>> 16) & 0xff),
  says,
});

/** The claim of an address by a NAME of 16 hexadecimal digits (source: iso-11783-5). */
export const claimFrame = ({ name, from, says }: { name: string; from: number; says: string }): SentFrame => ({
  id: buildCanId({ priority, pgn: addressClaim, source: from, destination: everyone }),
  // the most significant byte is written first and sent last
  data: Uint8Array.from((name.match(/../g) ?? []).reverse(), (byte) => Number.parseInt(byte, 16)),
  says,
});

/**
 * A frame as candump and cansend write it.
 *
 * @example frameText(requestFrame({ pgn: 60928, from: 254, to: 255, says: '' })) // '18EAFFFE#00EE00'
 */
export const frameText = ({ id, data }: Pick<SentFrame, 'id' | 'data'>): string => {
  const hex = Array.from(data, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return `${id.toString(16).padStart(8, '0')}#${hex}`.toUpperCase();
};
