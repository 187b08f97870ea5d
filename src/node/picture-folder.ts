import { mkdir, readFile, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import type { PictureType } from '../core/boat/picture.ts';
import { largestPictureBytes, pictureTypes } from '../core/boat/picture-limits.ts';
import { pictureTypeOf } from '../core/boat/picture-type-of.ts';
import { UserError } from '../core/boat/user-error.ts';
import { contentHash } from './files/content-hash.ts';
import { entriesOf } from './files/entries-of.ts';
import { fileRefusal } from './files/file-refusal.ts';
import { sweepTemporaries, writeWhole } from './files/write-whole.ts';
import { boatEnding } from './find-boats.ts';

/** One picture with its bytes. */
export interface PictureFile {
  readonly type: PictureType;
  readonly bytes: Buffer;
}

/** The pictures beside one boat file, by the hash of what they hold. */
export interface PictureFolder {
  /** undefined where there is none of that hash, or where the file no longer holds what its name says */
  readonly read: (hash: string) => Promise<PictureFile | undefined>;
  /** the hashes of all that `read` would give */
  readonly hashes: () => Promise<ReadonlySet<string>>;
  /** keeps a picture under the hash of its bytes; one that is there already is left as it is */
  readonly keep: (bytes: Uint8Array) => Promise<{ hash: string }>;
}

/** Where the pictures of a boat file are: `gannet.files` beside `gannet.boat.json`. */
const folderOf = (boatPath: string): string => join(dirname(boatPath), `${basename(boatPath, boatEnding)}.files`);

const named = new RegExp(`^([0-9a-f]{64})\\.(${pictureTypes.join('|')})$`);

/** The files of the folder by hash: a hash that somebody asks for is looked up here and never made into a path. */
const listed = async (folder: string): Promise<ReadonlyMap<string, string>> => {
  const entries = await entriesOf(folder);
  return new Map(
    entries.flatMap((entry): [string, string][] => {
      const hash = entry.isFile() ? named.exec(entry.name)?.[1] : undefined;
      return hash === undefined ? [] : [[hash, join(folder, entry.name)]];
    }),
  );
};

/** What a file holds; undefined where that is not what its name says. */
const pictureIn = async (path: string, hash: string): Promise<PictureFile | undefined> => {
  if ((await stat(path)).size > largestPictureBytes) return undefined;
  const bytes = await readFile(path);
  const type = pictureTypeOf(bytes);
  return type === undefined || contentHash(bytes) !== hash ? undefined : { type, bytes };
};

const read = async (folder: string, hash: string): Promise<PictureFile | undefined> => {
  const path = (await listed(folder)).get(hash);
  return path === undefined ? undefined : pictureIn(path, hash);
};

/** One after the other, for many pictures at once are much memory. */
const hashes = async (folder: string): Promise<ReadonlySet<string>> => {
  const found = new Set<string>();
  for (const [hash, path] of await listed(folder)) {
    if ((await pictureIn(path, hash)) !== undefined) found.add(hash);
  }
  return found;
};

const keep = async (folder: string, bytes: Uint8Array): Promise<{ hash: string }> => {
  const type = pictureTypeOf(bytes);
  if (type === undefined || bytes.length > largestPictureBytes) {
    throw new UserError({
      says: type === undefined ? 'This is no picture that can be kept.' : 'The picture is larger than 8 MB.',
      whatToDo: 'Choose a JPEG, PNG or WebP picture of at most 8 MB.',
    });
  }
  const hash = contentHash(bytes);
  if ((await read(folder, hash)) !== undefined) return { hash };
  await mkdir(folder, { recursive: true });
  await sweepTemporaries({ folder, nowMs: Date.now() });
  await writeWhole(join(folder, `${hash}.${type}`), bytes);
  return { hash };
};

/**
 * The pictures beside a boat file. Throws UserError for bytes that are no picture of at most 8 MB, or where the disk is full
 * or may not be written to.
 */
export const pictureFolder = (boatPath: string): PictureFolder => {
  const folder = folderOf(boatPath);
  const told = async <Value>(wanted: Promise<Value>): Promise<Value> => {
    try {
      return await wanted;
    } catch (error) {
      throw fileRefusal(error, folder);
    }
  };
  return {
    read: (hash) => told(read(folder, hash)),
    hashes: () => told(hashes(folder)),
    keep: (bytes) => told(keep(folder, bytes)),
  };
};
