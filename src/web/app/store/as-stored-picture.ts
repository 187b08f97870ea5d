import { pictureTypeOf } from '../../../core/boat/picture-type-of.ts';
import type { StoredPicture } from '../../../core/boat-store-shape.ts';

/** Bytes as the picture they are by how they begin; undefined where they are none that is kept beside a boat. */
export const asStoredPicture = (bytes: Uint8Array<ArrayBuffer>): StoredPicture | undefined => {
  const type = pictureTypeOf(bytes);
  return type === undefined ? undefined : { type, bytes };
};
