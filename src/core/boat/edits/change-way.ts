import * as z from 'zod';
import { waySchema } from '../boat-schema.ts';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { wayInWords } from './way-in-words.ts';

const { id: _, ends: __, length, kind, known, ...optional } = waySchema.shape;

const forgettable = ['bore', 'through', 'allows', 'trunkTimes', 'hours', 'exposure', 'near'] as const;

/** Changes what is said of a way, but for its ends; what is left out stays, what is in `forget` is no longer said. */
export const changeWay = defineEdit({
  id: 'change-way',
  params: z.strictObject({
    way: idSchema,
    length: z.exactOptional(length),
    kind: z.exactOptional(kind),
    known: z.exactOptional(known),
    ...optional,
    forget: z.exactOptional(z.array(z.enum(forgettable)).min(1)),
  }),
  title: ({ way, bore, kind: newKind, known: newKnown, counted, forget = [] }, boat) => {
    const facts = [
      ...(newKind === undefined ? [] : [newKind]),
      ...(newKnown === undefined ? [] : [newKnown]),
      ...(bore === undefined ? [] : [`bore ${bore.mm} mm, ${bore.how}`]),
      ...(counted === undefined ? [] : [counted ? 'all that is in it is known' : 'not all that is in it is known']),
      ...forget.map((field) => `${field === 'trunkTimes' ? 'trunks' : field} not known`),
    ];
    return `Change the way ${wayInWords(boat, way)}${facts.length === 0 ? '' : `: ${facts.join(', ')}`}.`;
  },
  change: (boat, { way, forget = [], ...wanted }) => {
    const found = findInBoat(boat.ways, way, 'way');
    for (const field of forget) delete found[field];
    Object.assign(found, wanted);
  },
});
