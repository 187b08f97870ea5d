import * as z from 'zod';
import { pinsSchema } from '../boat-schema.ts';
import { dottedIdSchema, splitDotted } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

const fusePin = pinsSchema.shape.fuses.unwrap().valueType;

/** Settles the protection that stands at a circuit, whatever the plan would pick. */
export const pinFuse = defineEdit({
  id: 'pin-fuse',
  params: z.strictObject({ circuit: dottedIdSchema, ...fusePin.shape }),
  title: ({ circuit, ratingA }) => `${circuit} is protected at ${ratingA} A.`,
  change: (boat, { circuit, ratingA, state }) => {
    const { kit: panel, part } = splitDotted(circuit);
    findInBoat(findInBoat(boat.supply.panels, panel, 'panel').circuits, part, 'circuit');
    boat.pins = { ...boat.pins, fuses: { ...boat.pins?.fuses, [circuit]: { ratingA, state } } };
  },
});
