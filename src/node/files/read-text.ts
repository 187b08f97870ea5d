import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { largestFileBytes } from '../../core/boat/read-boat.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { contentHash } from './content-hash.ts';
import { fileRefusal } from './file-refusal.ts';

const megabytes = (bytes: number): string => `${Math.ceil(bytes / 1_000_000)} MB`;

const tooBig = (size: string, path: string): UserError =>
  new UserError({
    says: `The file holds ${size}; a boat file is at most ${megabytes(largestFileBytes)}.`,
    place: path,
    whatToDo: 'Choose the boat file; its name ends in .boat.json.',
  });

/** All bytes of a stream, but no more than a boat file may have. */
const bytesOf = async (stream: AsyncIterable<unknown>, path: string): Promise<Buffer> => {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of stream) {
    const bytes = Buffer.isBuffer(chunk) ? chunk : Buffer.from(String(chunk));
    length += bytes.length;
    if (length > largestFileBytes) throw tooBig(`more than ${megabytes(largestFileBytes)}`, path);
    chunks.push(bytes);
  }
  return Buffer.concat(chunks);
};

const bytesOfFile = async (path: string): Promise<Buffer> => {
  try {
    const { size } = await stat(path);
    if (size > largestFileBytes) throw tooBig(megabytes(size), path);
    return await bytesOf(createReadStream(path), path);
  } catch (error) {
    throw fileRefusal(error, path);
  }
};

/** The text of some UTF-8 bytes. Bytes of another alphabet are refused: saving would lose the letters they stood for. */
const textOf = (bytes: Buffer, path: string): string => {
  const text = bytes.toString('utf8');
  // what does not even begin like a boat file is refused with better words when it is read
  const looksLikeBoat = /^\uFEFF?\s*\{/.test(text) && !text.includes('\0');
  if (!looksLikeBoat || Buffer.from(text, 'utf8').equals(bytes)) return text;
  const line = text.slice(0, text.indexOf('\uFFFD')).split('\n').length;
  throw new UserError({
    says: 'The file is not written in UTF-8: it holds a letter that cannot be read.',
    place: `line ${line} of ${path}`,
    whatToDo: 'Save it as UTF-8 in the editor it was written with.',
  });
};

/**
 * The text of a file that should be a boat file, or of the standard input where the path is `-`, and the hash of its
 * bytes. Throws UserError for a file that is missing, may not be read, is over 16 MB or is not UTF-8 text.
 */
export const readText = async (
  path: string,
  { stdin = process.stdin }: { stdin?: AsyncIterable<unknown> } = {},
): Promise<{ text: string; hash: string }> => {
  const shown = path === '-' ? 'the standard input' : path;
  const bytes = path === '-' ? await bytesOf(stdin, shown) : await bytesOfFile(path);
  return { text: textOf(bytes, shown), hash: contentHash(bytes) };
};
