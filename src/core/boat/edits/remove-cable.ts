import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { leaveWork } from './leave-work.ts';

/** Says of a cable that it is not aboard; a line it was a piece of still has that length. */
export const removeCable = defineEdit({
  id: 'remove-cable',
  params: z.strictObject({ cable: idSchema }),
  title: ({ cable }, boat) => `${boat.cables.find(({ id }) => id === cable)?.name ?? cable} is not aboard.`,
  change: (boat, { cable }) => {
    findInBoat(boat.cables, cable, 'cable');
    boat.cables = boat.cables.filter(({ id }) => id !== cable);
    leaveWork(boat, (id) => id === cable);
    for (const { pieces } of Object.values(boat.pins?.pieces ?? {})) {
      for (const piece of pieces) if (piece.cable === cable) delete piece.cable;
    }
  },
});
