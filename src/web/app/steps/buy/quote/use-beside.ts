import { useEffect, useRef, useState } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { ChangeRows } from '../../../../../papers/quote/change-order-text.ts';
import type { QuoteRow } from '../../../../../papers/quote/quote-rows.ts';
import type { QuoteAsked, QuoteReply } from '../../../../workers/quote-reply.ts';

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

const after = (was: Beside | undefined, reply: QuoteReply): Beside | undefined => {
  if (was === undefined) return was;
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

/** Options and change orders, reckoned in a worker of their own when somebody asks; forgotten when the boat changes. */
export const useBeside = (
  boat: Boat,
): { readonly found: Beside | undefined; readonly ask: (asked: QuoteAsked) => void; readonly stop: () => void } => {
  const [found, setFound] = useState<Beside | undefined>(undefined);
  const worker = useRef<Worker | undefined>(undefined);
  const end = (): void => {
    worker.current?.terminate();
    worker.current = undefined;
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: another boat makes what was found stale
  useEffect(() => {
    setFound(undefined);
    return end;
  }, [boat]);
  const ask = (asked: QuoteAsked): void => {
    end();
    setFound({ asks: asked.asks, state: 'running', options: [] });
    const own = new Worker(new URL('../../../../workers/quote-worker.ts', import.meta.url), { type: 'module' });
    worker.current = own;
    own.addEventListener('message', ({ data }: MessageEvent<QuoteReply>) => setFound((was) => after(was, data)));
    own.addEventListener('error', () => setFound((was) => (was === undefined ? was : { ...was, state: 'failed' })));
    own.postMessage(asked);
  };
  const stop = (): void => {
    end();
    setFound(undefined);
  };
  return { found, ask, stop };
};
