import { mkdir, open } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { boatEnding } from '../find-boats.ts';
import { fileRefusal } from './file-refusal.ts';

/** A file that a recording is written to: its path, and its name alone. */
export interface NewRecording {
  readonly path: string;
  readonly name: string;
}

/** Makes an empty file; false where there is one, for another program may record in the same second. */
const isMade = async (path: string): Promise<boolean> => {
  try {
    await (await open(path, 'wx')).close();
    return true;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') return false;
    throw error;
  }
};

/**
 * Makes the file that a recording made now goes to: `gannet.recordings/2027-03-31T09-30-00Z.log` beside `gannet.boat.json`, named by the
 * moment it begins and never one that is there. Throws UserError where the operating system refuses it.
 */
export const newRecording = async (boatPath: string, nowMs: number): Promise<NewRecording> => {
  const folder = join(dirname(boatPath), `${basename(boatPath, boatEnding)}.recordings`);
  try {
    await mkdir(folder, { recursive: true });
    const moment = `${new Date(nowMs).toISOString().slice(0, 19).replaceAll(':', '-')}Z`;
    let name = `${moment}.log`;
    for (let more = 2; !(await isMade(join(folder, name))); more += 1) name = `${moment}-${more}.log`;
    return { path: join(folder, name), name };
  } catch (error) {
    throw fileRefusal(error, folder);
  }
};
