import type { Photo } from '../../../../../src/core/boat/photo.ts';
import type { Fault } from '../../fault.ts';

const label: Photo = {
  of: 'fuel-port',
  shows: 'label',
  picture: { hash: '5eab1ade'.repeat(8), type: 'jpeg', widthPx: 1600, heightPx: 1200 },
};

/** Somebody took a photo of the label of the fuel sensor to port, and passed the file on without it. */
export const provenancePictureNotThere: Fault = {
  rule: 'provenance/picture-not-there',
  about: ['fuel-port'],
  plant: (boat) => ({ ...boat, photos: [...(boat.photos ?? []), label] }),
};
