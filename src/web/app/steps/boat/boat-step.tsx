import type { Step } from '../step.ts';
import { BoatBlock } from './boat-block.tsx';
import { BoatTables } from './boat-tables.tsx';

/** The step Boat: her places and ways, and how well they are known. */
export const boatStep: Step = {
  Margin: BoatBlock,
  tables: [{ words: 'places and ways', Table: BoatTables }],
};
