import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

/** Takes a day of the person's own out of the boat. */
export const removeDay = defineEdit({
  id: 'remove-day',
  params: z.strictObject({ day: idSchema }),
  title: ({ day }, boat) => `No longer reckon with the day “${boat.days?.find(({ id }) => id === day)?.name ?? day}”.`,
  change: (boat, { day }) => {
    const days = boat.days ?? [];
    findInBoat(days, day, 'day');
    const left = days.filter(({ id }) => id !== day);
    if (left.length > 0) boat.days = left;
    else delete boat.days;
  },
});
