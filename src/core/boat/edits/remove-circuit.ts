import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { leaveWork } from './leave-work.ts';

/** Takes a breaker or a fuse out of a panel; what it fed is then fed by none that the file says. Its place is free. */
export const removeCircuit = defineEdit({
  id: 'remove-circuit',
  params: z.strictObject({ panel: idSchema, circuit: idSchema }),
  title: ({ panel, circuit }) => `Take circuit ${circuit} out of panel ${panel}.`,
  change: (boat, { panel, circuit }) => {
    const own = findInBoat(boat.supply.panels, panel, 'panel');
    findInBoat(own.circuits, circuit, 'circuit');
    own.circuits = own.circuits.filter(({ id }) => id !== circuit);
    if (own.freeWays !== undefined) own.freeWays += 1;
    delete boat.pins?.fuses?.[`${panel}.${circuit}`];
    leaveWork(boat, (id) => id === `${panel}.${circuit}`);
  },
});
