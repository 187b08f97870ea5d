import { DiskTrouble } from './disk-trouble.ts';

interface Words {
  readonly says: string;
  readonly whatToDo: string;
}

const full: Words = {
  says: 'The disk is full; nothing was written, and what was there is as it was.',
  whatToDo: 'Make room, or save to another disk.',
};
const forbidden: Words = {
  says: 'This program may not use the file or its folder.',
  whatToDo: 'Choose a folder you may write to, or change its permissions.',
};
const missing: Words = { says: 'There is no such file or folder.', whatToDo: 'Check the spelling of the path.' };
const isFolder: Words = {
  says: 'This is a folder, not a file.',
  whatToDo: 'Name a file in it, or move the folder away.',
};
const inTheWay: Words = { says: 'A file stands where a folder has to be.', whatToDo: 'Move it away, then try again.' };
const tooMany: Words = {
  says: 'More files are open on this machine than it allows.',
  whatToDo: 'Close some programs, then try again.',
};

const wordsByCode: ReadonlyMap<string, Words> = new Map([
  ['ENOSPC', full],
  ['EDQUOT', full],
  [
    'EFBIG',
    {
      says: 'The file would be larger than files may be here; what was there is as it was.',
      whatToDo: 'Raise the limit, or save to another disk.',
    },
  ],
  ['EACCES', forbidden],
  ['EPERM', forbidden],
  ['EROFS', { says: 'The disk can only be read.', whatToDo: 'Save to another disk.' }],
  ['ENOENT', missing],
  ['ENOTDIR', missing],
  ['EISDIR', isFolder],
  ['EEXIST', inTheWay],
  ['EMFILE', tooMany],
  ['ENFILE', tooMany],
  ['ENAMETOOLONG', { says: 'The name of the file is too long.', whatToDo: 'Give it a shorter name.' }],
  ['ELOOP', { says: 'The path is a link that leads back to itself.', whatToDo: 'Name the file it should lead to.' }],
]);

const isSystemError = (error: unknown): error is NodeJS.ErrnoException =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' && 'syscall' in error;

/**
 * What the operating system has against a file, as DiskTrouble; anything else is given back as it is, for it is a fault
 * in the program. To be thrown.
 */
export const fileRefusal = (error: unknown, path: string): unknown => {
  if (!isSystemError(error)) return error;
  const words = wordsByCode.get(error.code ?? '') ?? {
    says: `The operating system refused the file: ${error.code}.`,
    whatToDo: 'Check the disk, then try again.',
  };
  return new DiskTrouble({ ...words, place: path });
};
