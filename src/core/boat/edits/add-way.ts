import * as z from 'zod';
import { waySchema } from '../boat-schema.ts';
import { guessedLength } from '../guessed-length.ts';
import { straightLineM } from '../straight-line.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

const { length, known, kind, ...rest } = waySchema.shape;

/** Adds a way between two places. Without a length it is guessed from the straight line; without more it is open and assumed. */
export const addWay = defineEdit({
  id: 'add-way',
  params: z.strictObject({
    ...rest,
    length: z.exactOptional(length),
    kind: z.exactOptional(kind),
    known: z.exactOptional(known),
  }),
  title: ({ ends }, boat) => `Add a way from ${ends.map((end) => nameInBoat(boat.places, end)).join(' to ')}.`,
  change: (boat, { kind: ownKind = 'open', known: ownKnown = 'assumed', length: ownLength, ...way }) => {
    const [from, to] = way.ends;
    const one = findInBoat(boat.places, from, 'place');
    const other = findInBoat(boat.places, to, 'place');
    boat.ways.push({
      ...way,
      kind: ownKind,
      known: ownKnown,
      length: ownLength ?? guessedLength(straightLineM(one, other), ownKind),
    });
  },
});
