import type { LogEntry } from '../../../core/log/log-entry.ts';

/**
 * What came of asking the laptop: an answer; nobody answered, or not now; this phone is not paired, or no longer; or a refusal
 * that asking again does not change.
 */
export type Heard<Value> =
  | { readonly kind: 'heard'; readonly value: Value }
  | { readonly kind: 'unheard'; readonly afterS?: number; readonly says?: string }
  | { readonly kind: 'unpaired' }
  | { readonly kind: 'refused'; readonly says: string };

/** A text that is read again only where it is another than before. */
export type ReadText = { readonly text: string; readonly tag: string } | 'as before';

/** How a phone reaches one boat on the laptop. */
export interface BoatLink {
  readonly sheet: (tag: string | undefined) => Promise<Heard<ReadText>>;
  readonly log: (tag: string | undefined) => Promise<Heard<ReadText>>;
  /** all of them or none; one that is there already is left as it is */
  readonly add: (entries: readonly LogEntry[]) => Promise<Heard<true>>;
  readonly putPicture: (hash: string, picture: Blob) => Promise<Heard<true>>;
}
