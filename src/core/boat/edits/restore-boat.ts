import * as z from 'zod';
import { become } from '../become.ts';
import { boatSchema } from '../boat-schema.ts';
import { defineEdit } from './define-edit.ts';

/** Makes the whole boat what another version of it is: one saved before, or one that was put together from two. */
export const restoreBoat = defineEdit({
  id: 'restore-boat',
  params: z.strictObject({ boat: boatSchema }),
  title: ({ boat }) => `Make ${boat.name} as she was saved.`,
  change: (draft, { boat }) => become(draft, boat),
});
