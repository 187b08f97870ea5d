import type { PictureType } from './picture.ts';

const startsWith = (bytes: Uint8Array, start: readonly number[], at = 0): boolean =>
  start.every((byte, place) => bytes[at + place] === byte);

const webp = { riff: [0x52, 0x49, 0x46, 0x46], mark: [0x57, 0x45, 0x42, 0x50] } as const;

/** What a file is by its first bytes, whatever it is called; undefined for all that is no picture kept beside a boat. */
export const pictureTypeOf = (bytes: Uint8Array): PictureType | undefined => {
  if (startsWith(bytes, [0xff, 0xd8, 0xff])) return 'jpeg';
  if (startsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return 'png';
  return startsWith(bytes, webp.riff) && startsWith(bytes, webp.mark, 8) ? 'webp' : undefined;
};
