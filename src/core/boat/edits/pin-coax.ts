import * as z from 'zod';
import { coaxKinds } from '../../facts/coax.ts';
import { pinsSchema } from '../boat-schema.ts';
import { lineIdSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';

const { kind, state } = pinsSchema.shape.coax.unwrap().valueType.shape;

/** Settles which kind of coax a line is made of; without a kind the plan picks one again. */
export const pinCoax = defineEdit({
  id: 'pin-coax',
  params: z.strictObject({
    line: lineIdSchema,
    as: z.exactOptional(z.strictObject({ kind, state })),
  }),
  title: ({ line, as }) =>
    as === undefined ? `The plan picks the coax of ${line}.` : `${line} is ${coaxKinds[as.kind].name}.`,
  change: (boat, { line, as }) => {
    const { [line]: _, ...others } = boat.pins?.coax ?? {};
    const coax = as === undefined ? others : { ...others, [line]: as };
    const { coax: __, ...pins } = boat.pins ?? {};
    boat.pins = Object.keys(coax).length === 0 ? pins : { ...pins, coax };
    if (Object.keys(boat.pins).length === 0) delete boat.pins;
  },
});
