import { useEffect, useRef, useState } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { WiringEntry } from '../../../../../core/proposal-shape.ts';
import type { WiringsReply } from '../../../../workers/wirings-reply.ts';

/** How far a comparison has come; none while nobody has asked for one. */
export interface Comparison {
  readonly wirings: readonly WiringEntry[];
  readonly count: number | undefined;
  readonly state: 'running' | 'done' | 'stopped' | 'failed';
}

const begun: Comparison = { wirings: [], count: undefined, state: 'running' };

const after = (was: Comparison | undefined, reply: WiringsReply): Comparison => {
  const known = was ?? begun;
  switch (reply.kind) {
    case 'count':
      return { ...known, count: reply.count };
    case 'wiring':
      return { ...known, wirings: [...known.wirings, reply.wiring] };
    case 'done':
      return { ...known, state: 'done' };
  }
};

/** Ways to wire a boat, compared in a worker of their own when somebody asks; forgotten when the boat changes. */
export const useWirings = (
  boat: Boat,
): { readonly found: Comparison | undefined; readonly start: () => void; readonly stop: () => void } => {
  const [found, setFound] = useState<Comparison | undefined>(undefined);
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
  const start = (): void => {
    end();
    setFound(begun);
    const own = new Worker(new URL('../../../../workers/wirings-worker.ts', import.meta.url), { type: 'module' });
    worker.current = own;
    own.addEventListener('message', ({ data }: MessageEvent<WiringsReply>) => setFound((was) => after(was, data)));
    own.addEventListener('error', () => setFound((was) => ({ ...(was ?? begun), state: 'failed' })));
    own.postMessage(boat);
  };
  const stop = (): void => {
    end();
    setFound((was) => (was === undefined ? was : { ...was, state: 'stopped' }));
  };
  return { found, start, stop };
};
