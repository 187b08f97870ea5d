import { needSchema } from '../boat-schema.ts';
import { UserError } from '../user-error.ts';
import { defineEdit } from './define-edit.ts';
import { isSameNeed, needInWords } from './same-need.ts';

/** Takes out the wish to see a reading at a unit. */
export const removeNeed = defineEdit({
  id: 'remove-need',
  params: needSchema.pick({ reading: true, instance: true, at: true }),
  title: (need) => `No longer want ${needInWords(need)}.`,
  change: (boat, need) => {
    const left = boat.needs.filter((entry) => !isSameNeed(entry, need));
    if (left.length === boat.needs.length) {
      throw new UserError({
        says: `The boat does not want ${needInWords(need)}.`,
        whatToDo: 'Choose one of its needs.',
      });
    }
    boat.needs = left;
  },
});
