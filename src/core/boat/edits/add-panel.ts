import { panelSchema } from '../supply.ts';
import { defineEdit } from './define-edit.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Adds a panel. */
export const addPanel = defineEdit({
  id: 'add-panel',
  params: panelSchema,
  title: ({ id, place, from }, boat) => `Add panel ${id} at ${nameInBoat(boat.places, place)}, fed from ${from}.`,
  change: (boat, panel) => {
    boat.supply.panels.push(panel);
  },
});
