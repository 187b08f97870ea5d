import type { BinderReply } from '../../../workers/binder-protocol.ts';
import type { BinderPort } from './binder-desk.ts';

/** Starts a worker that makes one binder. */
export const binderPort = (): BinderPort => {
  const worker = new Worker(new URL('../../../workers/binder-worker.ts', import.meta.url), { type: 'module' });
  return {
    post: (asked) => worker.postMessage(asked),
    // The worker is built from the same protocol, so what comes back is a reply.
    onReply: (listener) => worker.addEventListener('message', ({ data }: MessageEvent<BinderReply>) => listener(data)),
    onBreak: (listener) => worker.addEventListener('error', listener),
    end: () => worker.terminate(),
  };
};
