/** A 29-bit identifier of the bus, taken apart. */
export interface CanId {
  /** 0 wins over all others */
  readonly priority: number;
  readonly pgn: number;
  /** 255 = everyone */
  readonly destination: number;
  readonly source: number;
}

/** From this PF on a message is for everyone, and the byte below belongs to its number (source: pgn-database). */
const firstBroadcastFormat = 240;

const isBroadcast = (id: number): boolean => ((id >>> 16) & 0xff) >= firstBroadcastFormat;

/** Message number of a 29-bit identifier. */
export const pgnOfCanId = (id: number): number => (id >>> 8) & (isBroadcast(id) ? 0x3_ffff : 0x3_ff00);

/** Source address of a 29-bit identifier. */
export const sourceOfCanId = (id: number): number => id & 0xff;

/** Destination address of a 29-bit identifier; 255 = everyone. */
const destinationOfCanId = (id: number): number => (isBroadcast(id) ? 0xff : (id >>> 8) & 0xff);

/**
 * Takes a 29-bit identifier apart: from the top, 3 bits of priority, 2 of page, 8 of format, 8 specific, 8 of source.
 *
 * @example splitCanId(0x09f8012b) // { priority: 2, pgn: 129025, destination: 255, source: 43 }
 */
export const splitCanId = (id: number): CanId => ({
  priority: (id >>> 26) & 7,
  pgn: pgnOfCanId(id),
  destination: destinationOfCanId(id),
  source: sourceOfCanId(id),
});

/**
 * Puts a 29-bit identifier together. The destination counts only for an addressed message.
 *
 * @example buildCanId({ priority: 6, pgn: 59904, source: 37, destination: 14 }) // 0x18ea0e25
 */
export const buildCanId = ({ priority, pgn, destination, source }: CanId): number => {
  const addressed = ((pgn >>> 8) & 0xff) < firstBroadcastFormat;
  const middle = addressed ? (pgn & 0x3_ff00) | (destination & 0xff) : pgn & 0x3_ffff;
  return (((priority & 7) << 26) | (middle << 8) | (source & 0xff)) >>> 0;
};
