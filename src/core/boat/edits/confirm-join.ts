import * as z from 'zod';
import { joinSchema } from '../boat-schema.ts';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

/** Says who confirmed that the units of a join understand each other, where it stands written and for which version. */
export const confirmJoin = defineEdit({
  id: 'confirm-join',
  params: z.strictObject({ join: idSchema, ...joinSchema.shape.confirmed.unwrap().shape }),
  title: ({ join, source }) => `${join} is understood, by ${source}.`,
  change: (boat, { join, ...confirmed }) => {
    findInBoat(boat.joins, join, 'join').confirmed = confirmed;
  },
});
