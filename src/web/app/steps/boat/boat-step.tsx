import type { Step } from '../step.ts';
import { BoatBlock } from './boat-block.tsx';

/** The step Boat: her places and ways, and how well they are known. */
export const boatStep: Step = { Margin: BoatBlock };
