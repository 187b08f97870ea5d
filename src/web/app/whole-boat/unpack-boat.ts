import { type UnzipFileInfo, unzipSync } from 'fflate';
import { largestPictureBytes } from '../../../core/boat/picture-limits.ts';
import { UserError } from '../../../core/boat/user-error.ts';
import type { StoredPicture } from '../../../core/boat-store-shape.ts';
import { bytesHash } from '../../workers/text-hash.ts';
import { asStoredPicture } from '../store/as-stored-picture.ts';
import type { WholeBoat } from './whole-boat.ts';
import { words } from './words.ts';

/** What a boat file, a log and all pictures of one boat may be at most when unpacked, in bytes. */
const largest = { boat: 16_000_000, log: 64_000_000, all: 500_000_000 } as const;
const mostParts = 5000;

const boatName = /^(?:[^/]+\/)?([^/]+)\.boat\.json$/;
const picture = /^(?:[^/]+\/)?([^/]+)\.files\/([0-9a-f]{64})\.(?:jpeg|png|webp)$/;
const logName = /^(?:[^/]+\/)?([^/]+)\.log\.jsonl$/;

const refusal = (says: string): UserError => new UserError({ says, whatToDo: words.chooseZip });

/** What may be unpacked: the parts of a boat, and no more of them than a boat has. What a part says of its own size binds it. */
const mayUnpack = (): ((part: UnzipFileInfo) => boolean) => {
  let [parts, bytes] = [0, 0];
  return ({ name, originalSize }) => {
    const most = boatName.test(name)
      ? largest.boat
      : logName.test(name)
        ? largest.log
        : picture.test(name)
          ? largestPictureBytes
          : -1;
    if (most < 0) return false;
    parts += 1;
    bytes += originalSize;
    if (originalSize > most || parts > mostParts || bytes > largest.all) throw refusal(words.zipTooLarge);
    return true;
  };
};

const unpacked = (zip: Uint8Array): Readonly<Record<string, Uint8Array<ArrayBuffer>>> => {
  try {
    return unzipSync(zip, { filter: mayUnpack() });
  } catch (error) {
    if (error instanceof UserError) throw error;
    throw refusal(words.zipBroken);
  }
};

const textOf = (bytes: Uint8Array): string => {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw refusal(words.zipBroken);
  }
};

/**
 * Reads what `packBoat` wrote, or a folder of one boat that was packed by hand. Pictures whose bytes are not what their name
 * says are left out: the plan then doubts them as missing. Throws UserError for what holds no boat, or more than one.
 */
export const unpackBoat = (zip: Uint8Array): WholeBoat => {
  const parts = unpacked(zip);
  const names = Object.keys(parts);
  const boats = names.filter((name) => boatName.test(name));
  const [name] = boats;
  if (name === undefined) throw refusal(words.zipWithout);
  if (boats.length > 1) throw refusal(words.zipOfMany(boats.length));
  const id = boatName.exec(name)?.[1] ?? '';
  const log = names.find((one) => logName.exec(one)?.[1] === id);
  const pictures = new Map<string, StoredPicture>();
  for (const one of names) {
    const [, of, hash = ''] = picture.exec(one) ?? [];
    const bytes = parts[one];
    if (of !== id || bytes === undefined || bytesHash(bytes) !== hash) continue;
    const found = asStoredPicture(bytes);
    if (found !== undefined) pictures.set(hash, found);
  }
  return {
    id,
    text: textOf(parts[name] ?? new Uint8Array()),
    log: log === undefined ? '' : textOf(parts[log] ?? new Uint8Array()),
    pictures,
  };
};
