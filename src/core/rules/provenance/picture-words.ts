import type { Photo } from '../../boat/photo.ts';
import type { UnderlayView } from '../../boat/underlay.ts';

const viewWords: Readonly<Record<UnderlayView, string>> = { side: 'from the side', top: 'from above' };

const shownOf: Readonly<Record<Photo['shows'], string>> = {
  front: 'the front of ',
  back: 'the back of ',
  label: 'the label of ',
  other: '',
};

/** What is said of a picture under the drawing that cannot be shown. */
export const underlayNotFound = (view: UnderlayView): string =>
  `The picture under the boat ${viewWords[view]} is not found beside the boat file; it is needed for the drawing only.`;

/**
 * What is said of a photo that cannot be shown.
 *
 * @example photoNotFound({ shows: 'label', name: 'the radar' }) // 'A photo of the label of the radar is not found beside the boat file.'
 */
export const photoNotFound = ({ shows, name }: Pick<Photo, 'shows'> & { readonly name: string }): string =>
  `A photo of ${shownOf[shows]}${name} is not found beside the boat file.`;
