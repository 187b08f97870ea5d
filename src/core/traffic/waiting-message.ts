/** Messages that win over the one asked about: how long each sending takes, and how often it comes. */
export interface Winning {
  /** all frames together, µs, a whole number */
  readonly takesUs: number;
  /** µs, a whole number */
  readonly everyUs: number;
}

/** A message whose wait is asked, with all that can keep it waiting; whole microseconds. */
export interface WaitingMessage {
  /** one frame at its longest, C of a single frame */
  readonly frameUs: number;
  readonly frames: number;
  readonly everyUs: number;
  /** longest frame that loses against it, which may just have begun, B */
  readonly blockingUs: number;
  readonly winning: readonly Winning[];
  /** one bit, the time in which a frame that wins may still come first */
  readonly bitUs: number;
  /** true where the sender hands the bus one frame of a message at a time, so that each may find another just begun */
  readonly fedSingly?: boolean;
}
