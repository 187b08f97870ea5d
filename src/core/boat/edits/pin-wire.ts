import * as z from 'zod';
import { pinsSchema } from '../boat-schema.ts';
import { lineIdSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';

const wirePin = pinsSchema.shape.wires.unwrap().valueType;

/** Settles the copper of a feed, a feeder or the lead of a drive. */
export const pinWire = defineEdit({
  id: 'pin-wire',
  params: z.strictObject({ line: lineIdSchema, ...wirePin.shape }),
  title: ({ line, areaMm2 }) => `${line} is ${areaMm2} mm².`,
  change: (boat, { line, areaMm2, state }) => {
    boat.pins = { ...boat.pins, wires: { ...boat.pins?.wires, [line]: { areaMm2, state } } };
  },
});
