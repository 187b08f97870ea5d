import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import { UserError } from '../../core/boat/user-error.ts';
import { boatFolder } from '../../node/boat-folder.ts';
import { seedBoats } from '../../node/seed-boats.ts';
import type { PhonesSwitch, PhonesTold } from '../../server/phones/phones-switch.ts';
import { phonesThread } from '../../server/phones/phones-thread.ts';
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

interface OpenOptions {
  readonly port: number;
  readonly lan?: true;
  readonly lanPort?: number;
}

/** Phones for the boats of a folder, not let in yet. */
const phonesFor = (folder: string, { port, lanPort }: OpenOptions): PhonesSwitch =>
  phonesThread({
    folder,
    pageFolder: join(packageRoot, 'dist/phone'),
    port: lanPort ?? (port === 0 ? 0 : port + 1),
  });

/** Where phones find this machine, and how one is paired. */
const phoneLines = ({ addresses }: PhonesTold): string =>
  addresses.length === 0
    ? 'Phones are let in, but this machine is in no network now: join the boat’s wifi, then look at the step Work.\n'
    : [
        ...addresses.map((address) => `Phones on this network: ${address}\n`),
        'To pair one, open a boat here, go to the step Work and ask for a code under Phones.\n',
      ].join('');

/**
 * `fairlead open [folder]`: serves the app on this machine; the usual folder is made and given the demo boats. With `--lan`
 * phones on this machine’s network are let in too, by a listener of their own.
 */
export const open = async (folder: string | undefined, options: OpenOptions): Promise<void> => {
  const usual = join(process.cwd(), 'boats');
  const examples = join(packageRoot, 'examples');
  if (folder === undefined) await seedBoats({ folder: usual, examples });
  else await mustBeFolder(folder);
  const opened = folder ?? usual;
  const phones = phonesFor(opened, options);
  const server = await serve({
    appFolder: join(packageRoot, 'dist/web'),
    folders: { boats: boatFolder(opened), demos: boatFolder(examples) },
    port: options.port,
    phones,
  });
  if (options.lan === true) {
    try {
      await phones.turnOn();
    } catch (cause) {
      server.close();
      throw cause;
    }
  }
  process.stdout.write(`Fairlead is at http://127.0.0.1:${server.port}\n`);
  process.stdout.write(`Boats are in ${opened}. Press Ctrl-C to stop.\n`);
  if (options.lan === true) process.stdout.write(phoneLines(await phones.told()));
};
