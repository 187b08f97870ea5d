import type { LinkState } from '../core/proof/live/link-state.ts';

/**
 * Where the bytes of a live bus come from. A source tells how its link stands the moment that changes, tries again by
 * itself where the link is gone, and never throws: whatever goes wrong is told by `onLink`.
 */
export interface LiveSource {
  /** what it is, in words for a person: `UDP port 10110` */
  readonly says: string;
  start(onBytes: (bytes: Uint8Array) => void, onLink: (link: LinkState) => void): void;
  /** Lets go of the socket, port or file; nothing is told after that. */
  stop(): Promise<void>;
}
