import { realpath } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { boatFileName } from '../core/boat/boat-file-name.ts';
import { byCodeUnit } from '../core/boat/ids.ts';
import type { BoatOnList, SavedState } from '../core/boat-store-shape.ts';
import type { LogEntry } from '../core/log/log-entry.ts';
import { boatDescriber } from './describe-boats.ts';
import { contentHash } from './files/content-hash.ts';
import { DiskTrouble } from './files/disk-trouble.ts';
import { fileHash } from './files/file-hash.ts';
import { fileRefusal } from './files/file-refusal.ts';
import { goodState } from './files/good-state.ts';
import { keptStates } from './files/keep-backup.ts';
import { addToLog, readLogText } from './files/log-file.ts';
import { type NewRecording, newRecording } from './files/new-recording.ts';
import { readText } from './files/read-text.ts';
import { recoverBoat } from './files/recover-boat.ts';
import { saveBoat } from './files/save-boat.ts';
import { setBoatAside } from './files/set-boat-aside.ts';
import { boatEnding, type FoundBoat, findBoats } from './find-boats.ts';
import { type PictureFolder, pictureFolder } from './picture-folder.ts';
import { type SheetFolder, sheetFolder } from './sheet-folder.ts';

/** The text of a boat file, and the hash of its bytes that the next save must name. */
export interface BoatText {
  readonly text: string;
  readonly hash: string;
}

/** A boat file that cannot be read, and what can take its place. */
export interface DamagedBoat {
  readonly hash: string;
  readonly good?: SavedState & { readonly text: string };
}

/** The log beside one boat file: its lines as they stand, and adding some, of which it tells how many were new. */
export interface LogFile {
  readonly read: () => Promise<string>;
  readonly add: (entries: readonly LogEntry[]) => Promise<number>;
}

/** The boats of one folder, by ids that are looked up in the folder's own list and never made into a path. */
export interface BoatFolder {
  /** tells this folder from any other on this machine, without saying where it is */
  readonly mark: () => Promise<string>;
  readonly list: () => Promise<readonly BoatOnList[]>;
  /** undefined where the folder has no such boat */
  readonly read: (id: string) => Promise<BoatText | undefined>;
  /** saves over a boat that still holds what `readHash` says; throws as `saveBoat` does */
  readonly save: (id: string, save: { text: string; readHash: string }) => Promise<{ hash: string } | undefined>;
  /** the pictures beside a boat; undefined where the folder has no such boat */
  readonly pictures: (id: string) => Promise<PictureFolder | undefined>;
  /** the log beside a boat; undefined where the folder has no such boat */
  readonly log: (id: string) => Promise<LogFile | undefined>;
  /** where a recording of her bus made now goes; undefined where the folder has no such boat */
  readonly newRecording: (id: string, nowMs: number) => Promise<NewRecording | undefined>;
  /** the sheets kept beside the boats for the next one */
  readonly sheets: SheetFolder;
  /** what was saved over, the newest first; undefined where the folder has no such boat */
  readonly states: (id: string) => Promise<readonly SavedState[] | undefined>;
  /** one of those states; undefined where there is none of that name */
  readonly state: (id: string, state: string) => Promise<BoatText | undefined>;
  /** what a damaged boat file holds by its hash, and the newest state that can take its place; undefined where the folder has no such boat */
  readonly damaged: (id: string) => Promise<DamagedBoat | undefined>;
  /** puts a good text in the place of a damaged file that still holds what `readHash` says, and sets that aside */
  readonly recover: (id: string, save: { text: string; readHash: string }) => Promise<{ hash: string } | undefined>;
  /** sets a boat file aside with all that lies beside it; gives where in the folder it is then, undefined where there is no such boat */
  readonly setAside: (id: string) => Promise<string | undefined>;
  /** adds a boat under a free name made from its own; throws as `saveBoat` does */
  readonly add: (boat: { name: string; text: string }) => Promise<{ id: string; hash: string }>;
}

/** The folder beside the boats in which sheets are kept for the next one. */
export const ownSheets = 'own-sheets';

/** A folder may go while it is open: a stick is pulled, a disk of the network falls asleep, somebody renames it. */
const orGone = async <Value>(folder: string, wanted: Promise<Value>): Promise<Value> => {
  try {
    return await wanted;
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    if (code !== 'ENOENT' && code !== 'ENOTDIR') throw fileRefusal(error, folder);
    throw new DiskTrouble({
      says: 'The folder of the boats is not there any more; what is open in the app is kept there.',
      place: folder,
      whatToDo: 'Put the folder back where it was, or start the program with the folder as it is called now.',
    });
  }
};

const boatsIn = (folder: string): Promise<ReadonlyMap<string, FoundBoat>> => orGone(folder, findBoats(folder));

/** The boats of one folder: their list, the text of each by id, and saving. A file that cannot be read is listed with the reason. */
export const boatFolder = (folder: string): BoatFolder => {
  const describe = boatDescriber();
  return {
    sheets: sheetFolder(join(folder, ownSheets)),
    mark: async () => contentHash(await orGone(folder, realpath(folder))).slice(0, 16),
    list: async () => {
      const boats = [...(await boatsIn(folder)).values()].sort((a, b) => byCodeUnit(a.id, b.id));
      return describe(boats);
    },
    read: async (id) => {
      const found = (await boatsIn(folder)).get(id);
      return found === undefined ? undefined : readText(found.path);
    },
    save: async (id, { text, readHash }) => {
      const found = (await boatsIn(folder)).get(id);
      return found === undefined ? undefined : saveBoat({ path: found.path, text, readHash });
    },
    pictures: async (id) => {
      const found = (await boatsIn(folder)).get(id);
      return found === undefined ? undefined : pictureFolder(found.path);
    },
    log: async (id) => {
      const found = (await boatsIn(folder)).get(id);
      if (found === undefined) return undefined;
      return { read: () => readLogText(found.path), add: (entries) => addToLog(found.path, entries) };
    },
    newRecording: async (id, nowMs) => {
      const found = (await boatsIn(folder)).get(id);
      return found === undefined ? undefined : newRecording(found.path, nowMs);
    },
    states: async (id) => {
      const found = (await boatsIn(folder)).get(id);
      if (found === undefined) return undefined;
      return (await keptStates(found.path)).map(({ name, untilMs }) => ({ id: basename(name, '.json'), untilMs }));
    },
    state: async (id, state) => {
      const found = (await boatsIn(folder)).get(id);
      const states = found === undefined ? [] : await keptStates(found.path);
      const wanted = states.find(({ name }) => basename(name, '.json') === state);
      return wanted === undefined ? undefined : readText(wanted.path);
    },
    damaged: async (id) => {
      const found = (await boatsIn(folder)).get(id);
      if (found === undefined) return undefined;
      const good = await goodState(found.path);
      return {
        hash: await fileHash(found.path),
        ...(good === undefined
          ? {}
          : { good: { id: basename(good.name, '.json'), untilMs: good.untilMs, text: good.text } }),
      };
    },
    recover: async (id, { text, readHash }) => {
      const found = (await boatsIn(folder)).get(id);
      return found === undefined ? undefined : recoverBoat({ path: found.path, text, readHash });
    },
    setAside: async (id) => {
      const found = (await boatsIn(folder)).get(id);
      return found === undefined ? undefined : setBoatAside({ folder, path: found.path });
    },
    add: async ({ name, text }) => {
      const id = boatFileName(name, new Set((await boatsIn(folder)).keys()));
      const { hash } = await saveBoat({ path: join(folder, `${id}${boatEnding}`), text, isNew: true });
      return { id, hash };
    },
  };
};
