import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { bankSchema } from '../supply.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

const { id: _, place, chemistry, nominalV, capacityAh, for: forWhat, ...optional } = bankSchema.shape;

const partedWords = {
  switch: 'a switch',
  relay: 'a relay',
  diode: 'a diode',
  dcdc: 'a converter',
  apart: 'being wholly apart',
  nothing: 'nothing',
} as const;

const guardInWords = ({ kind, ratingA }: { kind: string; ratingA?: number | undefined }): string => {
  if (kind === 'none') return 'no main fuse';
  return `main ${kind}${ratingA === undefined ? '' : ` ${ratingA} A`}`;
};

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
  title: ({ bank, main, isolator, partedBy }) => {
    const facts = [
      ...(main === undefined ? [] : [guardInWords(main)]),
      ...(isolator === undefined ? [] : [isolator ? 'a switch takes it off' : 'no switch takes it off']),
      ...(partedBy === undefined ? [] : [`parted from the house by ${partedWords[partedBy]}`]),
    ];
    return facts.length === 0 ? `Say more of the bank ${bank}.` : `The bank ${bank}: ${facts.join(', ')}.`;
  },
  change: (boat, { bank, ...wanted }) => {
    Object.assign(findInBoat(boat.supply.banks, bank, 'bank'), wanted);
  },
});
