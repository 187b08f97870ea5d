import type { Picture } from '../../../core/boat/picture.ts';
import { largestPictureBytes } from '../../../core/boat/picture-limits.ts';
import { bytesHash } from '../../workers/text-hash.ts';
import { sizeWithin } from './size-within.ts';
import { words } from './words.ts';

/** Longest side of a picture that is kept beside a boat, pixels: enough to read a plan, and small enough to pass on. */
const longestPx = 2000;

/** Largest file that is taken to be made smaller. */
const largestFileBytes = 40_000_000;

const taken: ReadonlySet<string> = new Set(['image/jpeg', 'image/png', 'image/webp']);

/** A picture as it is kept: what the boat file says of it, and its bytes. */
export interface Shrunk {
  readonly picture: Picture;
  readonly blob: Blob;
}

const hashOf = async (blob: Blob): Promise<string> => bytesHash(new Uint8Array(await blob.arrayBuffer()));

/** Writes the picture anew, so that nothing of the camera’s goes with it: no place, no time. Lines stay sharp as PNG. */
const drawnAnew = async (bitmap: ImageBitmap, isLines: boolean): Promise<Shrunk | undefined> => {
  const { widthPx, heightPx } = sizeWithin({ widthPx: bitmap.width, heightPx: bitmap.height }, longestPx);
  const canvas = new OffscreenCanvas(widthPx, heightPx);
  const context = canvas.getContext('2d');
  if (context === null) return undefined;
  // what shows through counts as paper
  context.fillStyle = 'white';
  context.fillRect(0, 0, widthPx, heightPx);
  context.drawImage(bitmap, 0, 0, widthPx, heightPx);
  const png = isLines ? await canvas.convertToBlob({ type: 'image/png' }) : undefined;
  const isPng = png !== undefined && png.size <= largestPictureBytes / 4;
  const blob = isPng ? png : await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.85 });
  const picture: Picture = { hash: await hashOf(blob), type: isPng ? 'png' : 'jpeg', widthPx, heightPx };
  return { picture, blob };
};

/** Makes a picture that somebody chose small enough to be kept, or says in a sentence why it is none. */
export const shrinkPicture = async (file: File): Promise<Shrunk | { readonly refusal: string }> => {
  if (!taken.has(file.type)) return { refusal: words.noPicture };
  if (file.size > largestFileBytes) return { refusal: words.tooLarge };
  try {
    const bitmap = await createImageBitmap(file);
    const made = await drawnAnew(bitmap, file.type === 'image/png');
    bitmap.close();
    return made ?? { refusal: words.unreadable };
  } catch {
    return { refusal: words.unreadable };
  }
};
