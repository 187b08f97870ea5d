import { photoSchema } from '../photo.ts';
import { defineEdit } from './define-edit.ts';
import { photographed } from './photographed.ts';

/** Puts a photo to what it shows. */
export const addPhoto = defineEdit({
  id: 'add-photo',
  params: photoSchema,
  title: ({ of, shows }, boat) => `Add a photo of ${photographed(boat, of)}: ${shows}.`,
  change: (boat, photo) => {
    const { of, shows, picture } = photo;
    const held = boat.photos ?? [];
    if (held.some((one) => one.of === of && one.shows === shows && one.picture.hash === picture.hash)) return;
    boat.photos = [...held, photo];
  },
});
