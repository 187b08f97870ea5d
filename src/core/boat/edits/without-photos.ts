import type { Draft } from 'mutative';
import type { Boat } from '../boat-schema.ts';

/** Lets the photos of things go that leave the boat; the pictures stay in the folder, so that undo finds them. */
export const withoutPhotos = (boat: Draft<Boat>, isOfGone: (of: string) => boolean): void => {
  if (boat.photos === undefined) return;
  boat.photos = boat.photos.filter(({ of }) => !isOfGone(of));
  if (boat.photos.length === 0) delete boat.photos;
};
