import { config } from 'zod';
import { answerProof } from './answer-proof.ts';
import type { ProofRequest } from './proof-protocol.ts';

// The page forbids code made from text; without this zod would try it and the browser would log a refusal.
config({ jitless: true });

const answer = answerProof((reply) => postMessage(reply));

addEventListener('message', ({ data }: MessageEvent<ProofRequest>) => void answer(data));
