import { mkdir, readdir } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { boatEnding } from '../find-boats.ts';
import { fileRefusal } from './file-refusal.ts';

/** A file that a recording is written to: its path, and its name alone. */
export interface NewRecording {
  readonly path: string;
  readonly name: string;
}

/**
 * Where a recording made now goes: `gannet.recordings/2027-03-31T09-30-00Z.log` beside `gannet.boat.json`, named by the
 * moment it begins and never one that is there. Throws UserError where the folder cannot be made.
 */
export const newRecording = async (boatPath: string, nowMs: number): Promise<NewRecording> => {
  const folder = join(dirname(boatPath), `${basename(boatPath, boatEnding)}.recordings`);
  try {
    await mkdir(folder, { recursive: true });
    const there = new Set(await readdir(folder));
    const moment = `${new Date(nowMs).toISOString().slice(0, 19).replaceAll(':', '-')}Z`;
    let name = `${moment}.log`;
    for (let more = 2; there.has(name); more += 1) name = `${moment}-${more}.log`;
    return { path: join(folder, name), name };
  } catch (error) {
    throw fileRefusal(error, folder);
  }
};
