import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { WiringEntry } from '../../../../../core/proposal-shape.ts';
import type { WiringsReply } from '../../../../workers/wirings-reply.ts';
import { useOwnWorker } from '../../../use-own-worker.ts';

/** How far a comparison has come; none while nobody has asked for one. */
export interface Comparison {
  readonly wirings: readonly WiringEntry[];
  readonly count: number | undefined;
  readonly state: 'running' | 'done' | 'stopped' | 'failed';
}

const begun: Comparison = { wirings: [], count: undefined, state: 'running' };

const after = (known: Comparison, reply: WiringsReply): Comparison => {
  switch (reply.kind) {
    case 'count':
      return { ...known, count: reply.count };
    case 'wiring':
      return { ...known, wirings: [...known.wirings, reply.wiring] };
    case 'done':
      return { ...known, state: 'done' };
  }
};

const make = (): Worker =>
  new Worker(new URL('../../../../workers/wirings-worker.ts', import.meta.url), { type: 'module' });

/** Ways to wire a boat, compared in a worker of their own when somebody asks; forgotten when the boat changes. */
export const useWirings = (
  boat: Boat,
): { readonly found: Comparison | undefined; readonly start: () => void; readonly stop: () => void } => {
  const { found, ask, stop } = useOwnWorker<Boat, WiringsReply, Comparison>(boat, {
    make,
    after,
    failed: (known) => ({ ...known, state: 'failed' }),
  });
  return {
    found,
    start: () => ask(boat, begun),
    stop: () => stop((known) => ({ ...known, state: 'stopped' })),
  };
};
