import { config } from 'zod';
import { answerStarting } from './answer-starting.ts';
import type { StartingRequest } from './starting-protocol.ts';

// The page forbids code made from text; without this zod would try it and the browser would log a refusal.
config({ jitless: true });

const answer = answerStarting((reply) => postMessage(reply));

addEventListener('message', ({ data }: MessageEvent<StartingRequest>) => void answer(data));
