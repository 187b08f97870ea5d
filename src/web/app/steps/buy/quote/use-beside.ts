import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { ChangeRows } from '../../../../../papers/quote/change-order-text.ts';
import type { QuoteRow } from '../../../../../papers/quote/quote-rows.ts';
import type { QuoteAsked, QuoteReply } from '../../../../workers/quote-reply.ts';
import { useOwnWorker } from '../../../use-own-worker.ts';

/** What was asked beside the quote and has come so far. */
export interface Beside {
  readonly asks: QuoteAsked['asks'];
  readonly state: 'running' | 'done' | 'failed';
  readonly options: readonly QuoteRow[];
  /** how many there will be, the boat as she is planned apart */
  readonly of?: number;
  readonly change?: ChangeRows;
  readonly refused?: string;
}

const after = (was: Beside, reply: QuoteReply): Beside => {
  switch (reply.kind) {
    case 'options':
      return { ...was, options: reply.rows, of: reply.of };
    case 'change':
      return { ...was, change: reply.rows };
    case 'refused':
      return { ...was, refused: reply.says };
    case 'done':
      return { ...was, state: 'done' };
  }
};

const make = (): Worker =>
  new Worker(new URL('../../../../workers/quote-worker.ts', import.meta.url), { type: 'module' });

/** Options and change orders, reckoned in a worker of their own when somebody asks; forgotten when the boat changes. */
export const useBeside = (
  boat: Boat,
): { readonly found: Beside | undefined; readonly ask: (asked: QuoteAsked) => void; readonly stop: () => void } => {
  const { found, ask, stop } = useOwnWorker<QuoteAsked, QuoteReply, Beside>(boat, {
    make,
    after,
    failed: (was) => ({ ...was, state: 'failed' }),
  });
  return {
    found,
    ask: (asked) => ask(asked, { asks: asked.asks, state: 'running', options: [] }),
    stop: () => stop(() => undefined),
  };
};
