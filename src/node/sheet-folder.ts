import { mkdir, rm } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { boatFileName } from '../core/boat/boat-file-name.ts';
import { byCodeUnit } from '../core/boat/ids.ts';
import { readSheet } from '../core/boat/read-sheet.ts';
import type { Sheet } from '../core/boat/sheet.ts';
import { UserError } from '../core/boat/user-error.ts';
import { writeSheet } from '../core/boat/write-sheet.ts';
import { entriesOf } from './files/entries-of.ts';
import { fileRefusal } from './files/file-refusal.ts';
import { readText } from './files/read-text.ts';
import { sweepTemporaries, writeWhole } from './files/write-whole.ts';

/** What the name of every file of one sheet ends in. */
const sheetEnding = '.sheet.json';

/** The sheets somebody keeps for the next boat, one a file. */
export interface SheetFolder {
  /** those that can be read, by id; a file that cannot be read is left out and left alone */
  readonly list: () => Promise<readonly Sheet[]>;
  /** keeps a sheet under an id made from its name, in place of one of that name; gives it back as it is kept */
  readonly keep: (sheet: Sheet) => Promise<Sheet>;
  /** false where there is none of that id */
  readonly forget: (id: string) => Promise<boolean>;
}

/** The files of the folder by id: an id that somebody asks for is looked up here and never made into a path. */
const listed = async (folder: string): Promise<ReadonlyMap<string, string>> => {
  const entries = await entriesOf(folder);
  return new Map(
    entries
      .filter((entry) => entry.isFile() && entry.name.endsWith(sheetEnding))
      .sort((a, b) => byCodeUnit(a.name, b.name))
      .map((entry) => [basename(entry.name, sheetEnding), join(folder, entry.name)]),
  );
};

const readable = async (path: string): Promise<Sheet[]> => {
  try {
    return [readSheet((await readText(path)).text)];
  } catch (error) {
    if (error instanceof UserError) return [];
    throw error;
  }
};

/** The sheets kept in a folder, which is made when the first is kept. Throws UserError where the disk refuses. */
export const sheetFolder = (folder: string): SheetFolder => {
  const told = async <Value>(wanted: Promise<Value>): Promise<Value> => {
    try {
      return await wanted;
    } catch (error) {
      throw fileRefusal(error, folder);
    }
  };
  const keep = async (given: Sheet): Promise<Sheet> => {
    const sheet: Sheet = { ...given, id: `own-${boatFileName(given.name, new Set())}` };
    await mkdir(folder, { recursive: true });
    await sweepTemporaries({ folder, nowMs: Date.now() });
    await writeWhole(join(folder, `${sheet.id}${sheetEnding}`), writeSheet(sheet));
    return sheet;
  };
  const forget = async (id: string): Promise<boolean> => {
    const path = (await listed(folder)).get(id);
    if (path !== undefined) await rm(path);
    return path !== undefined;
  };
  return {
    list: () =>
      told(listed(folder).then((files) => Promise.all([...files.values()].map(readable)))).then((all) => all.flat()),
    keep: (sheet) => told(keep(sheet)),
    forget: (id) => told(forget(id)),
  };
};
