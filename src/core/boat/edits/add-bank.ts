import { bankSchema } from '../supply.ts';
import { defineEdit } from './define-edit.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Adds a battery bank. */
export const addBank = defineEdit({
  id: 'add-bank',
  params: bankSchema,
  title: ({ id, place, capacityAh, nominalV }, boat) =>
    `Add bank ${id} at ${nameInBoat(boat.places, place)}: ${capacityAh} Ah at ${nominalV} V.`,
  change: (boat, bank) => {
    boat.supply.banks.push(bank);
  },
});
