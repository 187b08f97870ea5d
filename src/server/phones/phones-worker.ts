import { parentPort, workerData } from 'node:worker_threads';
import { UserError } from '../../core/boat/user-error.ts';
import { boatFolder } from '../../node/boat-folder.ts';
import { readStaticFiles, type StaticFile } from '../static-files.ts';
import { phonesSwitch } from './phones-switch.ts';
import { sheetThread } from './sheet-thread.ts';
import type { ThreadCall, ThreadReply } from './thread-call.ts';

/** What the thread is begun with. */
export interface PhonesWork {
  /** of the boats, and of the page for phones */
  readonly folder: string;
  readonly pageFolder: string;
  readonly port: number;
}

const none: ReadonlyMap<string, StaticFile> = new Map();

// reason: begun by phones-thread.ts only
const { folder, pageFolder, port } = workerData as PhonesWork;
const phones = phonesSwitch({
  boats: boatFolder(folder),
  folder,
  port,
  // a page that is not built is told of by the switch
  files: () => readStaticFiles(pageFolder).catch(() => none),
  makeSheet: sheetThread().make,
});

const done = ({ what, id = '' }: ThreadCall): Promise<unknown> =>
  what === 'revoke' ? phones.revoke(id) : phones[what]();

const replyTo = async (asked: ThreadCall): Promise<ThreadReply> => {
  const { call } = asked;
  try {
    return { call, value: await done(asked) };
  } catch (error) {
    if (!(error instanceof UserError)) throw error;
    const { says, place, whatToDo } = error;
    return { call, says, place, whatToDo };
  }
};

parentPort?.on('message', async (asked: ThreadCall) => parentPort?.postMessage(await replyTo(asked)));
