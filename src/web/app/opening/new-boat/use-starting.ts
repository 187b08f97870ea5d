import { useCallback, useEffect, useRef } from 'react';
import type { StartingReply, StartingRequest } from '../../../workers/starting-protocol.ts';

/** The worker that boats are started in: begun by the first request, ended with the part that asks or when it is told to. */
export const useStarting = (
  onReply: (reply: StartingReply) => void,
): { readonly ask: (request: StartingRequest) => void; readonly end: () => void } => {
  const worker = useRef<Worker | undefined>(undefined);
  const hear = useRef(onReply);
  useEffect(() => {
    hear.current = onReply;
  }, [onReply]);
  const end = useCallback((): void => {
    worker.current?.terminate();
    worker.current = undefined;
  }, []);
  useEffect(() => end, [end]);
  const ask = useCallback((request: StartingRequest): void => {
    if (worker.current === undefined) {
      const own = new Worker(new URL('../../../workers/starting-worker.ts', import.meta.url), { type: 'module' });
      // the worker is built from the same protocol, so what comes back is a reply
      own.addEventListener('message', ({ data }: MessageEvent<StartingReply>) => hear.current(data));
      own.addEventListener('error', ({ message }) => hear.current({ kind: 'fault', detail: message }));
      worker.current = own;
    }
    worker.current.postMessage(request);
  }, []);
  return { ask, end };
};
