import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { UnderlayView } from '../../../../core/boat/underlay.ts';
import { firstFixes } from '../../../../core/boat/underlay-placement.ts';
import type { MakeEdits } from '../../edit-context.ts';
import { keepPicture } from '../../pictures/picture-keeper.ts';
import { shrinkPicture } from '../../pictures/shrink-picture.ts';
import { words } from './words.ts';

/** Makes a picture smaller, keeps it and lays it under a view, as long as the boat; gives why not, in a sentence, or nothing. */
export const takePicture = async (
  { boat, edit }: { readonly boat: Boat; readonly edit: MakeEdits },
  view: UnderlayView,
  file: File,
): Promise<string> => {
  const made = await shrinkPicture(file);
  if ('refusal' in made) return made.refusal;
  const whyNot = await keepPicture(made);
  if (whyNot !== undefined) return words.pictureNotKept(whyNot);
  const { picture } = made;
  edit([
    { edit: 'set-underlay', params: { view, picture, ...firstFixes({ ...picture, lengthM: boat.hull.lengthM }) } },
  ]);
  return '';
};
