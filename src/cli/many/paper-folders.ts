import { basename, join } from 'node:path';

const idOf = (file: string): string =>
  basename(file)
    .replace(/\.json$/, '')
    .replace(/\.boat$/, '');

/**
 * A folder in `out` for the papers of each boat, named as her file; of several files of one name the second gets `-2`. Names
 * that differ by capitals only count as one, for some disks take them so.
 */
export const paperFolders = (files: readonly string[], out: string): ReadonlyMap<string, string> => {
  const taken = new Set<string>();
  return new Map(
    files.map((file) => {
      const id = idOf(file);
      let [name, count] = [id, 1];
      while (taken.has(name.toLowerCase())) {
        count += 1;
        name = `${id}-${count}`;
      }
      taken.add(name.toLowerCase());
      return [file, join(out, name)];
    }),
  );
};
