import { access, lstat, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import * as z from 'zod';
import { UserError } from '../../core/boat/user-error.ts';
import { fileRefusal } from '../../node/files/file-refusal.ts';
import { writeWhole } from '../../node/files/write-whole.ts';

/** The paired phones of a folder of boats are kept in this file of it, which is no boat and is on no list. */
export const deviceFileName = 'phones.json';

/** More phones than a yard has. */
export const mostDevices = 32;
const largestBytes = 100_000;

const momentSchema = z.int().min(0);
const deviceSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9]{8}$/),
  name: z.string().min(1).max(60),
  pairedAtMs: momentSchema,
  lastSeenMs: momentSchema,
  /** SHA-256 of the token; the token itself is on the phone and nowhere else */
  tokenHash: z.string().regex(/^[0-9a-f]{64}$/),
});

/** A phone that was paired. */
export type Device = z.infer<typeof deviceSchema>;

const fileSchema = z.strictObject({
  format: z.literal('fairlead-phones'),
  version: z.literal(1),
  devices: z.array(deviceSchema).max(mostDevices),
});

const damaged = (path: string): UserError =>
  new UserError({
    says: 'The list of paired phones cannot be read.',
    place: path,
    whatToDo: 'Take the file away; each phone is then paired anew.',
  });

const devicesIn = (text: string, path: string): readonly Device[] => {
  try {
    return fileSchema.parse(JSON.parse(text)).devices;
  } catch {
    throw damaged(path);
  }
};

const devicesOf = async (path: string): Promise<readonly Device[]> => {
  const text = await readFile(path, 'utf8').catch((error: unknown) => {
    throw fileRefusal(error, path);
  });
  return devicesIn(text, path);
};

/** The paired phones of one folder as they stand on the disk. */
export interface DeviceFile {
  /** read again only where the file is another than before; a file that was taken away leaves none */
  readonly read: () => Promise<readonly Device[]>;
  /** through to the disk, whole or not at all, readable for its owner only */
  readonly write: (devices: readonly Device[]) => Promise<void>;
}

/** @throws UserError from both, when the file is damaged or the operating system refuses it */
export const deviceFile = (folder: string): DeviceFile => {
  const path = join(folder, deviceFileName);
  let known: { readonly state: string; readonly devices: readonly Device[] } = { state: 'none', devices: [] };

  const stateOf = async (): Promise<string> => {
    const found = await lstat(path, { bigint: true }).catch((error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOENT') return undefined;
      throw fileRefusal(error, path);
    });
    // a folder that went while it was open has not forgotten its phones
    if (found === undefined)
      await access(folder).catch((error: unknown) => {
        throw fileRefusal(error, folder);
      });
    if (found === undefined) return 'none';
    // a link could lead to a list of somebody else’s making
    if (!found.isFile() || found.size > largestBytes) throw damaged(path);
    return `${found.ino} ${found.size} ${found.mtimeNs}`;
  };

  return {
    read: async () => {
      const state = await stateOf();
      if (state !== known.state) known = { state, devices: state === 'none' ? [] : await devicesOf(path) };
      return known.devices;
    },
    write: async (devices) => {
      const text = JSON.stringify({ format: 'fairlead-phones', version: 1, devices }, undefined, 2);
      try {
        await writeWhole(path, `${text}\n`, 0o600);
      } catch (error) {
        throw fileRefusal(error, path);
      }
    },
  };
};
