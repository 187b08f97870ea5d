import { stat } from 'node:fs/promises';
import { UserError } from '../../core/boat/user-error.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import { boatFilesUnder } from '../../node/boat-files-under.ts';

const isFolder = async (path: string): Promise<boolean> =>
  path !== '-' && (await stat(path).catch(() => undefined))?.isDirectory() === true;

/** One boat is asked for where one file is named; it is then dealt with by itself. */
export const isOneBoat = async (named: readonly string[]): Promise<boolean> =>
  named.length === 1 && !(await isFolder(named[0] ?? ''));

const filesOf = async (path: string): Promise<readonly string[]> => {
  if (path === '-')
    throw new UserError({
      says: 'One boat can come from standard input, not one among several.',
      whatToDo: 'Name all of them as files, or give - alone.',
    });
  if (!(await isFolder(path))) return [path];
  const found = await boatFilesUnder(path);
  if (found.length > 0) return found;
  throw new UserError({
    says: 'There is no boat file in this folder.',
    place: path,
    whatToDo: 'Names of boat files end in .boat.json.',
  });
};

/**
 * Every boat file that was named or lies in a folder that was named, once each, by code unit.
 *
 * @throws UserError for a folder without boats, and for standard input among others
 */
export const boatsAskedFor = async (named: readonly string[]): Promise<readonly string[]> => {
  const found = new Set<string>();
  for (const path of named) for (const file of await filesOf(path)) found.add(file);
  return [...found].sort(byCodeUnit);
};
