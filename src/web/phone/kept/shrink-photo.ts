import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { Picture } from '../../../core/boat/picture.ts';
import { sizeWithin } from '../../app/pictures/size-within.ts';

/** Enough to read the small print of a label, and a few hundred kilobytes to send. */
const longestPx = 1800;
const quality = 0.82;

/** A photo as it is sent: what the log says of it, and its bytes. */
export interface ShrunkPhoto {
  readonly picture: Picture;
  readonly bytes: Blob;
}

/**
 * Makes a photo smaller and writes it anew, so that nothing of the camera’s goes with it; undefined where it cannot be read.
 * Over plain http a browser computes no hash, so the library does.
 */
export const shrinkPhoto = async (file: Blob): Promise<ShrunkPhoto | undefined> => {
  try {
    const bitmap = await createImageBitmap(file);
    const { widthPx, heightPx } = sizeWithin({ widthPx: bitmap.width, heightPx: bitmap.height }, longestPx);
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [widthPx, heightPx];
    const context = canvas.getContext('2d');
    if (context === null) return undefined;
    context.fillStyle = 'white';
    context.fillRect(0, 0, widthPx, heightPx);
    context.drawImage(bitmap, 0, 0, widthPx, heightPx);
    bitmap.close();
    const bytes = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', quality));
    if (bytes === null) return undefined;
    const hash = bytesToHex(sha256(new Uint8Array(await bytes.arrayBuffer())));
    return { picture: { hash, type: 'jpeg', widthPx, heightPx }, bytes };
  } catch {
    return undefined;
  }
};
