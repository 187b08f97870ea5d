import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Plan } from '../../plan-shape.ts';
import { proofReport } from './proof-of-watched.ts';
import type { ProofReport } from './proof-report.ts';
import type { Watched } from './watched.ts';

/** Several watches of one boat held against her plan together. */
export const proofOf = ({ boat, plan }: { boat: Boat; plan: Plan }, all: readonly Watched[]): ProofReport =>
  proofReport({ index: indexBoat(boat), plan }, all);
