import { boatFileName } from '../../../core/boat/boat-file-name.ts';
import { largestPictureBytes } from '../../../core/boat/picture-limits.ts';
import { pictureTypeOf } from '../../../core/boat/picture-type-of.ts';
import type { Sheet } from '../../../core/boat/sheet.ts';
import { UserError } from '../../../core/boat/user-error.ts';
import type { BoatStore, StoredPicture } from '../../../core/boat-store-shape.ts';
import type { LogEntry } from '../../../core/log/log-entry.ts';
import { answerOf, type Drawer, drawers } from './boat-base.ts';
import { browserRefusal } from './browser-refusal.ts';
import { type BrowserTools, factsOf, orRefusal } from './kept-boats.ts';
import { withChange } from './kept-facts.ts';
import { words } from './words.ts';

const { boats, logs, pictures, sheets } = drawers;

/** As much as is added to a log at once elsewhere too. */
const mostAtOnce = 1000;

const sentenceOf = (error: unknown): string => {
  const { says, place, whatToDo } = browserRefusal(error).refusal;
  return `${says}${place === undefined ? '' : ` (${place})`} ${whatToDo}`;
};

const logIn = async (drawer: IDBObjectStore, id: string): Promise<string> =>
  // reason: only this program writes to its drawers, here and below
  (await answerOf(drawer.get(id) as IDBRequest<string | undefined>)) ?? '';

/** Adds something beside a boat and counts it as a change of hers; false where there is no such boat. */
const addBeside = (
  { at, nowMs }: BrowserTools,
  { id, to }: { id: string; to: Drawer },
  add: (drawer: IDBObjectStore) => Promise<boolean>,
): Promise<boolean> =>
  at([boats, to], 'readwrite', async (drawer) => {
    const facts = await factsOf(drawer(boats), id);
    if (facts === undefined) return false;
    if (await add(drawer(to))) drawer(boats).put(withChange(facts, nowMs()), id);
    return true;
  });

const addEntries = async (tools: BrowserTools, id: string, entries: readonly LogEntry[]): Promise<true | string> => {
  const { checkEntries, addedLines } = await tools.checks();
  const checked = checkEntries(entries, mostAtOnce);
  if (typeof checked === 'string') return checked;
  const isThere = await addBeside(tools, { id, to: logs }, async (drawer) => {
    const before = await logIn(drawer, id);
    const { text, count } = addedLines(before, checked);
    if (count > 0) drawer.put(before + text, id);
    return count > 0;
  });
  return isThere || words.noBoat(id);
};

const logsOf = (tools: BrowserTools): Pick<BoatStore, 'readLog' | 'addToLog'> => ({
  readLog: async (id) => {
    const found = await orRefusal(async () => ({
      text: await tools.at([boats, logs], 'readonly', async (drawer) =>
        (await factsOf(drawer(boats), id)) === undefined ? undefined : logIn(drawer(logs), id),
      ),
    }));
    return 'refusal' in found ? undefined : found.text;
  },
  addToLog: async (id, entries) => {
    const done = await orRefusal(() => addEntries(tools, id, entries));
    // what the browser refuses now is sent again
    return typeof done === 'object' ? undefined : done;
  },
});

const keep = async (
  tools: BrowserTools,
  { id, hash, picture: { bytes } }: { id: string; hash: string; picture: StoredPicture },
): Promise<string | undefined> => {
  const type = pictureTypeOf(bytes);
  if (bytes.length > largestPictureBytes) return words.tooLarge;
  const { bytesHash } = await tools.checks();
  if (bytesHash(bytes) !== hash) return words.notWhole;
  if (type === undefined) return words.noPicture;
  const isThere = await addBeside(tools, { id, to: pictures }, async (drawer) => {
    if ((await answerOf(drawer.getKey([id, hash]))) !== undefined) return false;
    const kept: StoredPicture = { type, bytes };
    drawer.put(kept, [id, hash]);
    return true;
  });
  return isThere ? undefined : words.noBoat(id);
};

/** Every key that begins with an id: arrays stand after all texts. */
export const ofBoat = (id: string): IDBKeyRange => IDBKeyRange.bound([id], [id, []]);

const picturesOf = (tools: BrowserTools): Pick<BoatStore, 'pictures' | 'picture' | 'keepPicture'> => ({
  pictures: async (id) => {
    const found = await orRefusal(async () => ({
      hashes: await tools.at([boats, pictures], 'readonly', async (drawer) => {
        if ((await factsOf(drawer(boats), id)) === undefined) return undefined;
        const keys = await answerOf(drawer(pictures).getAllKeys(ofBoat(id)));
        return keys.map((key) => String((key as [string, string])[1]));
      }),
    }));
    return 'refusal' in found ? undefined : found.hashes;
  },
  picture: async (shelf, id, hash) => {
    if (shelf === 'demos') return tools.demos.picture(id, hash);
    const found = await orRefusal(async () => ({
      picture: await tools.at([pictures], 'readonly', (drawer) =>
        answerOf(drawer(pictures).get([id, hash]) as IDBRequest<StoredPicture | undefined>),
      ),
    }));
    return 'refusal' in found ? undefined : found.picture;
  },
  keepPicture: async (id, hash, picture) => {
    try {
      return await keep(tools, { id, hash, picture });
    } catch (error) {
      return sentenceOf(error);
    }
  },
});

const sheetsOf = (tools: BrowserTools): Pick<BoatStore, 'sheets' | 'keepSheet' | 'forgetSheet'> => {
  const whyNot = async (work: () => Promise<string | undefined>): Promise<string | undefined> => {
    try {
      return await work();
    } catch (error) {
      return sentenceOf(error);
    }
  };
  return {
    sheets: async () => {
      const found = await orRefusal(async () => ({
        texts: await tools.at([sheets], 'readonly', (drawer) =>
          answerOf(drawer(sheets).getAll() as IDBRequest<string[]>),
        ),
      }));
      if ('refusal' in found) return undefined;
      if (found.texts.length === 0) return [];
      const { readSheet } = await tools.checks();
      return found.texts.flatMap((text): Sheet[] => {
        try {
          return [readSheet(text)];
        } catch (error) {
          if (error instanceof UserError) return [];
          throw error;
        }
      });
    },
    keepSheet: (text) =>
      whyNot(async () => {
        const { readSheet, writeSheet } = await tools.checks();
        const given = readSheet(text);
        const sheet: Sheet = { ...given, id: `own-${boatFileName(given.name, new Set())}` };
        await tools.at([sheets], 'readwrite', (drawer) => answerOf(drawer(sheets).put(writeSheet(sheet), sheet.id)));
        return undefined;
      }),
    forgetSheet: (id) =>
      whyNot(() =>
        tools.at([sheets], 'readwrite', async (drawer) => {
          if ((await answerOf(drawer(sheets).getKey(id))) === undefined) return words.noSheet(id);
          drawer(sheets).delete(id);
          return undefined;
        }),
      ),
  };
};

/** What lies beside the boats in this browser: their logs and pictures, and the sheets kept for the next one. */
export const keptBeside = (tools: BrowserTools) => ({
  ...logsOf(tools),
  ...picturesOf(tools),
  ...sheetsOf(tools),
});
