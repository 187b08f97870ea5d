import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { nameInBoat } from './name-in-boat.ts';
import { withoutPin } from './without-pin.ts';

/** Lets the plan lay a bus out again. */
export const unpinLayout = defineEdit({
  id: 'unpin-layout',
  params: z.strictObject({ bus: idSchema }),
  title: ({ bus }, boat) => `${nameInBoat(boat.buses, bus)} may be laid out anew.`,
  change: (boat, { bus }) => withoutPin(boat, 'layouts', bus),
});
