import { placeSchema } from '../boat-schema.ts';
import { defineEdit } from './define-edit.ts';

/** Adds a place to the boat. */
export const addPlace = defineEdit({
  id: 'add-place',
  params: placeSchema,
  title: ({ name }) => `Add ${name}.`,
  change: (boat, place) => {
    boat.places.push(place);
  },
});
