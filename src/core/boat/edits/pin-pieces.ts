import * as z from 'zod';
import { pinsSchema } from '../boat-schema.ts';
import { lineIdSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';

const piecesPin = pinsSchema.shape.pieces.unwrap().valueType;

/** Settles the cables a line is made of, end to end. */
export const pinPieces = defineEdit({
  id: 'pin-pieces',
  params: z.strictObject({ line: lineIdSchema, ...piecesPin.shape }),
  title: ({ line, pieces }) =>
    `${line} is made of ${pieces.map(({ mm }) => `${(mm / 1000).toFixed(2)} m`).join(' and ')}.`,
  change: (boat, { line, pieces, state }) => {
    boat.pins = { ...boat.pins, pieces: { ...boat.pins?.pieces, [line]: { pieces, state } } };
  },
});
