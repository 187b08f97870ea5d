import { needSchema } from '../boat-schema.ts';
import { UserError } from '../user-error.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { isSameNeed, needInWords } from './same-need.ts';

/** Adds a reading that must, or had better, be seen at a unit. */
export const addNeed = defineEdit({
  id: 'add-need',
  params: needSchema,
  title: (need) => `Want ${needInWords(need)}.`,
  change: (boat, need) => {
    findInBoat(boat.kit, need.at, 'unit');
    if (boat.needs.some((entry) => isSameNeed(entry, need))) {
      throw new UserError({
        says: `The boat already wants ${needInWords(need)}.`,
        whatToDo: 'Change that need, or give another unit or instance.',
      });
    }
    boat.needs.push(need);
  },
});
