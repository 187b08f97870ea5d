import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { fileRefusal } from './file-refusal.ts';

/** The SHA-256 of what a file holds, in hexadecimal, whatever that is and however much. */
export const fileHash = async (path: string): Promise<string> => {
  const hash = createHash('sha256');
  try {
    for await (const piece of createReadStream(path)) hash.update(piece);
  } catch (error) {
    throw fileRefusal(error, path);
  }
  return hash.digest('hex');
};
