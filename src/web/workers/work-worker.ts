import { config } from 'zod';
import { answerWork } from './answer-work.ts';
import type { WorkRequest } from './work-protocol.ts';

// The page forbids code made from text; without this zod would try it and the browser would log a refusal.
config({ jitless: true });

/** Looks for a better order of the work; who has seen enough ends the worker. */
addEventListener('message', ({ data }: MessageEvent<WorkRequest>) => {
  for (const reply of answerWork(data)) postMessage(reply);
});
