import * as z from 'zod';
import { photoSchema } from '../photo.ts';
import { pictureSchema } from '../picture.ts';
import { UserError } from '../user-error.ts';
import { defineEdit } from './define-edit.ts';
import { photographed } from './photographed.ts';

/** Takes a photo away; its picture stays in the folder beside the boat file, so that undo finds it. */
export const removePhoto = defineEdit({
  id: 'remove-photo',
  params: z.strictObject({ of: photoSchema.shape.of, shows: photoSchema.shape.shows, hash: pictureSchema.shape.hash }),
  title: ({ of, shows }, boat) => `Take a photo of ${photographed(boat, of)} away: ${shows}.`,
  change: (boat, { of, shows, hash }) => {
    const left = (boat.photos ?? []).filter(
      (photo) => photo.of !== of || photo.shows !== shows || photo.picture.hash !== hash,
    );
    if (left.length === (boat.photos ?? []).length) {
      throw new UserError({ says: 'There is no such photo.', whatToDo: 'Choose one that the boat has.' });
    }
    if (left.length === 0) delete boat.photos;
    else boat.photos = left;
  },
});
