import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { panelSchema } from '../supply.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

const { id: _, place, from, circuits: __, ...optional } = panelSchema.shape;

/** Changes what is said of a panel, but for its circuits; what is left out stays. */
export const changePanel = defineEdit({
  id: 'change-panel',
  params: z.strictObject({
    panel: idSchema,
    place: z.exactOptional(place),
    from: z.exactOptional(from),
    ...optional,
  }),
  title: ({ panel, freeWays }) =>
    freeWays === undefined ? `Say more of the panel ${panel}.` : `The panel ${panel}: ${freeWays} places free.`,
  change: (boat, { panel, ...wanted }) => {
    Object.assign(findInBoat(boat.supply.panels, panel, 'panel'), wanted);
  },
});
