import { ownDaySchema } from '../own-day.ts';
import { defineEdit } from './define-edit.ts';

/** Puts a day of the person's own into the boat, in place of one with the same id. */
export const setDay = defineEdit({
  id: 'set-day',
  params: ownDaySchema,
  title: ({ name }) => `Reckon with the day “${name}”.`,
  change: (boat, day) => {
    boat.days = [...(boat.days ?? []).filter(({ id }) => id !== day.id), day];
  },
});
