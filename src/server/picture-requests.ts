import type { IncomingMessage } from 'node:http';
import { byCodeUnit } from '../core/boat/ids.ts';
import { largestPictureBytes } from '../core/boat/picture-limits.ts';
import { contentHash } from '../node/files/content-hash.ts';
import type { PictureFolder } from '../node/picture-folder.ts';
import { type Answer, says } from './answer.ts';
import { bodyOf } from './body-of.ts';
import { refusalOfWriting } from './refusal-of-writing.ts';

const tooLarge = says(413, 'The picture is larger than 8 MB.', 'Choose a smaller one.');

/** How a picture is sent. */
export const asPicture = {
  type: /^image\/(jpeg|png|webp)$/i,
  as: 'A picture is sent as image/jpeg, image/png or image/webp.',
} as const;

/** Keeps a picture that was sent, if its bytes are those its address names. */
export const keepSent = async (bytes: Buffer, pictures: PictureFolder, hash: string): Promise<Answer> =>
  contentHash(bytes) === hash
    ? { status: 200, json: await pictures.keep(bytes) }
    : says(422, 'The picture did not arrive whole.', 'Try again.');

const keep = async (request: IncomingMessage, pictures: PictureFolder, hash: string): Promise<Answer> => {
  const refused = refusalOfWriting(request, asPicture);
  if (refused !== undefined) return refused;
  if (Number(request.headers['content-length'] ?? 0) > largestPictureBytes) return tooLarge;
  const bytes = await bodyOf(request, largestPictureBytes);
  return bytes === undefined ? tooLarge : keepSent(bytes, pictures, hash);
};

/**
 * Answers what concerns the pictures beside a boat: `GET` lists them by hash, or reads one; `PUT` keeps one, if its bytes are
 * those the address names.
 */
export const pictureRequest = async (
  request: IncomingMessage,
  { pictures, hash, mayWrite }: { pictures: PictureFolder; hash?: string; mayWrite: boolean },
): Promise<Answer> => {
  if (hash === undefined) {
    if (request.method !== 'GET') return says(405, 'A list of pictures can only be read.');
    return { status: 200, json: [...(await pictures.hashes())].sort(byCodeUnit) };
  }
  if (request.method === 'GET') {
    const found = await pictures.read(hash);
    if (found === undefined) return says(404, 'This picture is not in the folder beside the boat file.');
    return { status: 200, picture: { type: `image/${found.type}`, bytes: found.bytes } };
  }
  if (request.method !== 'PUT' || !mayWrite) return says(405, 'Only reading is possible here.');
  return keep(request, pictures, hash);
};
