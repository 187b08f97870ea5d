import * as z from 'zod';
import { idSchema } from './ids.ts';
import { pictureSchema } from './picture.ts';

/** What of a thing aboard a photo shows. */
export const photoShows = ['front', 'back', 'label', 'other'] as const;

/** A photo beside the boat file, of a place, a way, a unit, a bank, a panel or an opening. */
export const photoSchema = z.strictObject({
  of: idSchema,
  shows: z.enum(photoShows),
  picture: pictureSchema,
});
export type Photo = z.infer<typeof photoSchema>;

export const photosSchema = z
  .array(photoSchema)
  .max(2000)
  .refine(
    (photos) =>
      new Set(photos.map(({ of, shows, picture }) => `${of} ${shows} ${picture.hash}`)).size === photos.length,
    { message: 'A photo stands once for what it shows.' },
  );
