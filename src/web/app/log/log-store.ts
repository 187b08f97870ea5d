import { type BoatLog, boatLog } from '../../../core/log/boat-log.ts';
import type { LogEntry } from '../../../core/log/log-entry.ts';
import { type NewEntry, stampEntry } from '../../../core/log/new-entry.ts';
import { readLog } from '../../../core/log/read-log.ts';

/** Where a log is kept between two visits of the page: the browser’s own store, by a name. */
export interface Shelf {
  readonly get: (name: string) => string | null;
  readonly set: (name: string, text: string) => void;
}

/** How a log is read from the folder and added to there; undefined where it could not be reached. */
export interface LogLink {
  readonly read: () => Promise<string | undefined>;
  /** whether the entries are safe there, or refused for good, with a sentence; undefined where nobody answered */
  readonly add: (entries: readonly LogEntry[]) => Promise<true | string | undefined>;
}

export interface LogState {
  readonly log: BoatLog;
  /** entries that are not in the folder yet */
  readonly waiting: number;
  /** why some were refused, in a sentence */
  readonly refused?: string;
  /** lines that cannot be read, written by a newer program or damaged; they stay where they are */
  readonly unread: number;
}

/** The log of one boat as the page has it: what the folder holds and what is still to be sent there. */
export interface LogStore {
  readonly state: () => LogState;
  readonly onChange: (listener: () => void) => () => void;
  readonly append: (entry: NewEntry) => void;
  /** reads the folder anew and sends what waits; done again and again while the page stands */
  readonly sync: () => Promise<void>;
}

const mostAtOnce = 500;
/** The server takes in a megabyte at once; no letter is longer than three bytes. */
const mostLettersAtOnce = 300_000;

/** The first of some entries, as many as are sent at once; at least one. */
const firstOf = (entries: readonly LogEntry[], most: number): readonly LogEntry[] => {
  let letters = 0;
  const end = entries.findIndex((entry, at) => {
    letters += JSON.stringify(entry).length;
    return at >= most || (at > 0 && letters > mostLettersAtOnce);
  });
  return end < 0 ? entries : entries.slice(0, end);
};

const written = (entries: readonly LogEntry[], unread: readonly string[]): string =>
  [...unread, ...entries.map((entry) => JSON.stringify(entry))].join('\n');

/** The lines of a text that are no entries as this program knows them. */
const unreadIn = (text: string): readonly string[] => {
  const lines = text.split('\n');
  return readLog(text).broken.map(({ line }) => lines[line - 1] ?? '');
};

/**
 * Starts the log of a boat. What is written stands on the shelf before it is sent, and leaves it when the folder has it: a
 * page that is closed, a link that fails and a sending that comes twice lose nothing and double nothing. Without a link the
 * shelf is all there is.
 */
export const startLogStore = ({
  name,
  shelf,
  link,
  stamp,
}: {
  name: string;
  shelf: Shelf;
  link?: LogLink;
  stamp: () => { id: string; nowMs: number };
}): LogStore => {
  const key = `log ${name}`;
  let waiting = readLog(shelf.get(key) ?? '').entries;
  const unread = unreadIn(shelf.get(key) ?? '');
  let unreadInFolder = 0;
  let inFolder: readonly LogEntry[] = [];
  let refused: string | undefined;
  const listeners = new Set<() => void>();
  const made = (): LogState => ({
    log: boatLog([...inFolder, ...waiting]),
    waiting: link === undefined ? 0 : waiting.length,
    unread: unread.length + unreadInFolder,
    ...(refused === undefined ? {} : { refused }),
  });
  let state = made();
  const changed = (): void => {
    state = made();
    for (const listener of listeners) listener();
  };
  /** refused on this visit: they stay on the shelf, and are sent again on the next one */
  const putAside: LogEntry[] = [];
  const keepWaiting = (entries: readonly LogEntry[]): void => {
    waiting = entries;
    shelf.set(key, written([...putAside, ...entries], unread));
  };

  const send = async ({ add }: LogLink): Promise<void> => {
    let most = mostAtOnce;
    while (waiting.length > 0) {
      const some = firstOf(waiting, most);
      const answer = await add(some);
      if (answer === undefined) return;
      if (answer !== true && some.length > 1) {
        // all are refused for the sake of one: fewer are sent until it is found
        most = Math.ceil(some.length / 2);
        continue;
      }
      const sent = new Set(some.map(({ id }) => id));
      if (answer === true) inFolder = [...inFolder, ...some];
      else {
        refused = answer;
        putAside.push(...some);
      }
      keepWaiting(waiting.filter(({ id }) => !sent.has(id)));
    }
  };

  let syncing: Promise<void> | undefined;
  const syncOnce = async (): Promise<void> => {
    if (link === undefined) return;
    await send(link);
    const text = await link.read();
    if (text !== undefined) {
      const { entries, broken } = readLog(text);
      inFolder = entries;
      unreadInFolder = broken.length;
    }
    changed();
  };

  return {
    state: () => state,
    onChange(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    append(entry) {
      keepWaiting([...waiting, stampEntry(state.log, entry, stamp())]);
      changed();
    },
    sync() {
      syncing ??= syncOnce().finally(() => {
        syncing = undefined;
      });
      return syncing;
    },
  };
};
