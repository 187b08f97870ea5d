import { useEffect, useRef, useState } from 'react';
import type { Boat } from '../../core/boat/boat-schema.ts';

/** A worker that is made when somebody asks, with what it has found so far; none while nobody has asked. */
export interface OwnWorker<Asked, Found> {
  readonly found: Found | undefined;
  /** asks anew, in place of what was asked before; `begun` is what is found at first */
  readonly ask: (asked: Asked, begun: Found) => void;
  /** gives up, and keeps `then` of what was found */
  readonly stop: (then: (found: Found) => Found | undefined) => void;
}

/**
 * What takes long and is wanted seldom, reckoned in a worker of its own. What was found is forgotten when the boat changes.
 * Give the same functions every time.
 */
export const useOwnWorker = <Asked, Reply, Found>(
  boat: Boat,
  {
    make,
    after,
    failed,
  }: {
    readonly make: () => Worker;
    /** what is found once a reply has come */
    readonly after: (found: Found, reply: Reply) => Found;
    readonly failed: (found: Found) => Found;
  },
): OwnWorker<Asked, Found> => {
  const [found, setFound] = useState<Found | undefined>(undefined);
  const worker = useRef<Worker | undefined>(undefined);
  const end = (): void => {
    worker.current?.terminate();
    worker.current = undefined;
  };
  const change = (to: (found: Found) => Found | undefined): void =>
    setFound((was) => (was === undefined ? undefined : to(was)));
  // biome-ignore lint/correctness/useExhaustiveDependencies: another boat makes what was found stale
  useEffect(() => {
    setFound(undefined);
    return end;
  }, [boat]);
  return {
    found,
    ask: (asked, begun) => {
      end();
      setFound(begun);
      const own = make();
      worker.current = own;
      own.addEventListener('message', ({ data }: MessageEvent<Reply>) => change((was) => after(was, data)));
      own.addEventListener('error', () => change(failed));
      own.postMessage(asked);
    },
    stop: (then) => {
      end();
      change(then);
    },
  };
};
