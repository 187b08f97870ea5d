import type { WorkReply } from '../../../workers/work-protocol.ts';
import type { BeginSearch } from './work-desk.ts';

/** Ticks that come one after another are one search: it begins when none has come for so long. */
const restMs = 250;

/** A search in a worker of its own, which ends with it. */
export const beginSearch: BeginSearch = (request, hear) => {
  let worker: Worker | undefined;
  const timer = setTimeout(() => {
    worker = new Worker(new URL('../../../workers/work-worker.ts', import.meta.url), { type: 'module' });
    // the worker is built from the same protocol, so what comes back is a reply
    worker.addEventListener('message', ({ data }: MessageEvent<WorkReply>) => hear(data));
    worker.addEventListener('error', ({ message }) => hear({ kind: 'fault', detail: message }));
    worker.postMessage(request);
  }, restMs);
  return () => {
    clearTimeout(timer);
    worker?.terminate();
  };
};
