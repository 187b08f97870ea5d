import * as z from 'zod';
import { underlaySchema } from '../underlay.ts';
import { UserError } from '../user-error.ts';
import { defineEdit } from './define-edit.ts';
import { viewWords } from './set-underlay.ts';

/** Takes the picture from under one view; its file stays in the folder beside the boat file, so that undo finds it. */
export const removeUnderlay = defineEdit({
  id: 'remove-underlay',
  params: z.strictObject({ view: underlaySchema.shape.view }),
  title: ({ view }) => `Take the picture ${viewWords[view]} away.`,
  change: (boat, { view }) => {
    const left = (boat.underlays ?? []).filter((entry) => entry.view !== view);
    if (left.length === (boat.underlays ?? []).length) {
      throw new UserError({
        says: `There is no picture under the boat ${viewWords[view]}.`,
        whatToDo: 'Choose a view that has one.',
      });
    }
    if (left.length === 0) delete boat.underlays;
    else boat.underlays = left;
  },
});
