import type { Step } from '../step.ts';
import { BoatAbove } from './boat-above.tsx';
import { BoatBlock } from './boat-block.tsx';
import { BoatHand } from './boat-hand.tsx';
import { BoatTables } from './boat-tables.tsx';
import { words } from './words.ts';

/** The step Boat: her places and ways, and how well they are known. */
export const boatStep: Step = {
  Above: BoatAbove,
  Margin: BoatBlock,
  tables: [{ words: words.table, Table: BoatTables }],
  OnSheet: BoatHand,
};
