import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { panelSchema } from '../supply.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

const { place, from, feeder, mainA, main, tapV, freeWays } = panelSchema.shape;
const forgettable = ['feeder', 'mainA', 'main', 'tapV', 'freeWays'] as const;

/** Changes what is said of a panel, but for its circuits; what is left out stays, what is in `forget` is no longer said. */
export const changePanel = defineEdit({
  id: 'change-panel',
  params: z.strictObject({
    panel: idSchema,
    place: z.exactOptional(place),
    from: z.exactOptional(from),
    feeder,
    mainA,
    main,
    tapV,
    freeWays,
    forget: z.exactOptional(z.array(z.enum(forgettable)).min(1)),
  }),
  title: (wanted, boat) => {
    const facts = [
      ...(wanted.place === undefined ? [] : [`at ${nameInBoat(boat.places, wanted.place)}`]),
      ...(wanted.from === undefined ? [] : [`fed from ${wanted.from}`]),
      ...(wanted.feeder === undefined ? [] : [`feeder of ${wanted.feeder.length.valueM} m`]),
      ...(wanted.mainA === undefined ? [] : [`main of ${wanted.mainA} A`]),
      ...(wanted.freeWays === undefined ? [] : [`${wanted.freeWays} places free`]),
    ];
    return `Change panel ${wanted.panel}${facts.length === 0 ? '' : `: ${facts.join(', ')}`}.`;
  },
  change: (boat, { panel, forget = [], ...wanted }) => {
    const found = findInBoat(boat.supply.panels, panel, 'panel');
    for (const field of forget) delete found[field];
    Object.assign(found, wanted);
  },
});
