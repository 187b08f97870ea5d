import { cableSchema } from '../boat-schema.ts';
import { defineEdit } from './define-edit.ts';

/** Says of a cable that it is aboard already. */
export const addCable = defineEdit({
  id: 'add-cable',
  params: cableSchema,
  title: ({ id, name = id }) => `${name} is aboard.`,
  change: (boat, cable) => {
    boat.cables.push(cable);
  },
});
