import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { bankSchema } from '../supply.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

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

const forgettable = [
  'lowestV',
  'internalMilliOhm',
  'coldCrankingA',
  'shortCircuitA',
  'main',
  'isolator',
  'partedBy',
] as const;

/** Changes what is said of a bank; what is left out stays, what is in `forget` is no longer said. */
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
    forget: z.exactOptional(z.array(z.enum(forgettable)).min(1)),
  }),
  title: ({ bank, main, isolator, partedBy, ...said }, boat) => {
    const facts = [
      ...(said.place === undefined ? [] : [`at ${nameInBoat(boat.places, said.place)}`]),
      ...(said.chemistry === undefined ? [] : [said.chemistry]),
      ...(said.nominalV === undefined ? [] : [`${said.nominalV} V`]),
      ...(said.capacityAh === undefined ? [] : [`${said.capacityAh} Ah`]),
      ...(said.for === undefined ? [] : [`for ${said.for}`]),
      ...(main === undefined ? [] : [guardInWords(main)]),
      ...(isolator === undefined ? [] : [isolator ? 'a switch takes it off' : 'no switch takes it off']),
      ...(partedBy === undefined ? [] : [`parted from the house by ${partedWords[partedBy]}`]),
      ...(said.seen === undefined ? [] : [said.seen ? 'read from its label' : 'not read from its label']),
    ];
    return facts.length === 0 ? `Say more of the bank ${bank}.` : `The bank ${bank}: ${facts.join(', ')}.`;
  },
  change: (boat, { bank, forget = [], ...wanted }) => {
    const found = findInBoat(boat.supply.banks, bank, 'bank');
    for (const field of forget) delete found[field];
    Object.assign(found, wanted);
  },
});
