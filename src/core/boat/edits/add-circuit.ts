import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { circuitSchema } from '../supply.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

/** Puts a breaker or a fuse more into a panel; of places that were counted free it takes one. */
export const addCircuit = defineEdit({
  id: 'add-circuit',
  params: z.strictObject({ panel: idSchema, circuit: circuitSchema }),
  title: ({ panel, circuit }) => `A circuit of ${circuit.ratingA} A more in panel ${panel}.`,
  change: (boat, { panel, circuit }) => {
    const own = findInBoat(boat.supply.panels, panel, 'panel');
    own.circuits.push(circuit);
    if (own.freeWays !== undefined && own.freeWays > 0) own.freeWays -= 1;
  },
});
