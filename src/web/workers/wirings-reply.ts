import type { WiringEntry } from '../../core/proposal-shape.ts';

/** What comes back of a comparison: how many ways there are, each of them as it is known, the end. */
export type WiringsReply =
  | { readonly kind: 'count'; readonly count: number }
  | { readonly kind: 'wiring'; readonly wiring: WiringEntry }
  | { readonly kind: 'done' };
