import type { Boat } from '../../core/boat/boat-schema.ts';
import type { ChangeRows } from '../../papers/quote/change-order-text.ts';
import type { QuoteRow } from '../../papers/quote/quote-rows.ts';

/** What is asked beside one quote: the ways to wire her, or what changed since an older text of her file. */
export type QuoteAsked =
  | { readonly asks: 'options'; readonly boat: Boat; readonly says: string }
  | { readonly asks: 'since'; readonly boat: Boat; readonly before: string };

/** What comes back: options as each is known, the change order, or why there is none. */
export type QuoteReply =
  | { readonly kind: 'options'; readonly rows: readonly QuoteRow[]; readonly of: number }
  | { readonly kind: 'change'; readonly rows: ChangeRows }
  | { readonly kind: 'refused'; readonly says: string }
  | { readonly kind: 'done' };
