import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import { UserError } from '../../core/boat/user-error.ts';
import { boatFolder } from '../../node/boat-folder.ts';
import { seedBoats } from '../../node/seed-boats.ts';
import { serve } from '../../server/serve.ts';
import { packageRoot } from '../package-root.ts';

const mustBeFolder = async (folder: string): Promise<void> => {
  const found = await stat(folder).catch(() => undefined);
  if (found?.isDirectory() === true) return;
  throw new UserError({
    says: found === undefined ? 'There is no such folder.' : 'This is a file, not a folder.',
    place: folder,
    whatToDo: 'Give the folder that holds the boat files, or none for the usual one.',
  });
};

/** `fairlead open [folder]`: serves the app on this machine; the usual folder is made and given the demo boats. */
export const open = async (folder: string | undefined, { port }: { port: number }): Promise<void> => {
  const usual = join(process.cwd(), 'boats');
  const examples = join(packageRoot, 'examples');
  if (folder === undefined) await seedBoats({ folder: usual, examples });
  else await mustBeFolder(folder);
  const server = await serve({
    appFolder: join(packageRoot, 'dist/web'),
    folders: { boats: boatFolder(folder ?? usual), demos: boatFolder(examples) },
    port,
  });
  process.stdout.write(`Fairlead is at http://127.0.0.1:${server.port}\n`);
  process.stdout.write(`Boats are in ${folder ?? usual}. Press Ctrl-C to stop.\n`);
};
