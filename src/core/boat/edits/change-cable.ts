import * as z from 'zod';
import { cableSchema } from '../boat-schema.ts';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

const { name, kind, diameterMm, conductors, areaMm2, coax, condition, fate, ways, length, terminator } =
  cableSchema.shape;

/** Changes what is said of a cable that is aboard, but for what it ends at; what is left out stays. */
export const changeCable = defineEdit({
  id: 'change-cable',
  params: z.strictObject({
    cable: idSchema,
    name,
    kind: z.exactOptional(kind),
    ways: z.exactOptional(ways),
    length: z.exactOptional(length),
    diameterMm: z.exactOptional(diameterMm),
    conductors,
    areaMm2,
    coax,
    condition: z.exactOptional(condition),
    fate: z.exactOptional(fate),
    terminator,
  }),
  title: ({ cable }, boat) => `Change the cable ${boat.cables.find(({ id }) => id === cable)?.name ?? cable}.`,
  change: (boat, { cable, ...wanted }) => {
    Object.assign(findInBoat(boat.cables, cable, 'cable'), wanted);
  },
});
