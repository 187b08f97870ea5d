import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { kitSiteSchema } from '../site.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Says what is known of the spot a sensor sits in, in place of all that was said of it; nothing forgets it. */
export const setSite = defineEdit({
  id: 'set-site',
  params: z.strictObject({ unit: idSchema, site: z.exactOptional(kitSiteSchema) }),
  title: ({ unit, site }, boat) =>
    site === undefined
      ? `Nothing is known of how ${nameInBoat(boat.kit, unit)} sits.`
      : `How ${nameInBoat(boat.kit, unit)} sits.`,
  change: (boat, { unit, site }) => {
    const found = findInBoat(boat.kit, unit, 'unit');
    if (site === undefined) delete found.site;
    else found.site = site;
  },
});
