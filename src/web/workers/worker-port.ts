import type { PlanPort } from './plan-client.ts';
import type { PlanReply } from './protocol.ts';

/** The worker that first-worker.js started with the page, where that is built so. */
const startedWithPage = (): Worker | undefined => (globalThis as { firstWorker?: Worker }).firstWorker;

/** The planning worker; it loads while the page is being drawn. */
export const workerPort = (): PlanPort => {
  const worker = startedWithPage() ?? new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' });
  return {
    postMessage: (request) => worker.postMessage(request),
    // The worker is built from the same protocol, so what comes back is a reply.
    onReply: (listener) => worker.addEventListener('message', ({ data }: MessageEvent<PlanReply>) => listener(data)),
    onBreak: (listener) => worker.addEventListener('error', (event) => listener(event.message)),
  };
};
