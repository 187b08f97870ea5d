import { busSchema } from '../boat-schema.ts';
import { defineEdit } from './define-edit.ts';

/** Puts another bus aboard, with nothing on it yet. */
export const addBus = defineEdit({
  id: 'add-bus',
  params: busSchema,
  title: ({ name }) => `Add ${name}.`,
  change: (boat, bus) => {
    boat.buses.push(bus);
  },
});
