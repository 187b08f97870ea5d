import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { bankSchema } from '../supply.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

const { id: _, place, chemistry, nominalV, capacityAh, for: forWhat, ...optional } = bankSchema.shape;

/** Changes what is said of a bank; what is left out stays. */
export const changeBank = defineEdit({
  id: 'change-bank',
  params: z.strictObject({
    bank: idSchema,
    place: z.exactOptional(place),
    chemistry: z.exactOptional(chemistry),
    nominalV: z.exactOptional(nominalV),
    capacityAh: z.exactOptional(capacityAh),
    for: z.exactOptional(forWhat),
    ...optional,
  }),
  title: ({ bank }) => `Say more of the bank ${bank}.`,
  change: (boat, { bank, ...wanted }) => {
    Object.assign(findInBoat(boat.supply.banks, bank, 'bank'), wanted);
  },
});
