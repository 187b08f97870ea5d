import * as z from 'zod';
import { kitSchema } from '../boat-schema.ts';
import { dottedIdSchema, splitDotted } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

const entrySchema = kitSchema.shape.instances.unwrap().element;

/** Gives a unit its instance number for a reading at one of its ports, in place of those it had for it there. */
export const setInstance = defineEdit({
  id: 'set-instance',
  params: z.strictObject({ port: dottedIdSchema, ...entrySchema.omit({ port: true }).shape }),
  title: ({ port, reading, instance }) => `${port} sends ${reading} as instance ${instance}.`,
  change: (boat, { port: dotted, reading, instance }) => {
    const { kit, part: port } = splitDotted(dotted);
    const unit = findInBoat(boat.kit, kit, 'unit');
    const others = (unit.instances ?? []).filter((entry) => entry.port !== port || entry.reading !== reading);
    unit.instances = [...others, { port, reading, instance }];
  },
});
