import type { Dirent } from 'node:fs';
import { readdir } from 'node:fs/promises';

/** What is in a folder; nothing where there is no such folder yet. Throws what the operating system says of one that cannot be read. */
export const entriesOf = async (folder: string): Promise<Dirent[]> => {
  try {
    return await readdir(folder, { withFileTypes: true });
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    if (code === 'ENOENT' || code === 'ENOTDIR') return [];
    throw error;
  }
};
