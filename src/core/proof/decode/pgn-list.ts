/** The messages a device says that it sends, or takes (PGN 126464). */
export interface PgnList {
  readonly direction: 'sends' | 'receives';
  /** ascending, each once */
  readonly pgns: readonly number[];
}

const directions = ['sends', 'receives'] as const;
const bytesOfNumber = 3;

/** Reads a list of message numbers (source: pgn-database); undefined for a list of another kind. */
export const readPgnList = (payload: Uint8Array): PgnList | undefined => {
  const direction = directions[payload[0] ?? directions.length];
  if (direction === undefined) return undefined;
  const pgns = new Set<number>();
  for (let at = 1; at + bytesOfNumber <= payload.length; at += bytesOfNumber) {
    const pgn = (payload[at] ?? 0) | ((payload[at + 1] ?? 0) << 8) | ((payload[at + 2] ?? 0) << 16);
    // All ones fill up what is left of the last frame of a sender that does not say where its list ends.
    if (pgn !== 0xff_ffff) pgns.add(pgn);
  }
  return { direction, pgns: [...pgns].sort((a, b) => a - b) };
};
