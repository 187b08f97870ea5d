import { useEffect, useSyncExternalStore } from 'react';
import { type BoatLog, emptyLog } from '../../../core/log/boat-log.ts';
import type { LogEntry } from '../../../core/log/log-entry.ts';
import type { NewEntry } from '../../../core/log/new-entry.ts';
import { boatOfFolder } from '../pictures/picture-keeper.ts';
import { type LogLink, type LogState, type LogStore, type Shelf, startLogStore } from './log-store.ts';

/** How often the folder is looked at, for others may write there too. */
const everyMs = 15_000;

const randomId = (): string =>
  [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => (byte % 36).toString(36)).join('');

const stamp = (): { id: string; nowMs: number } => ({ id: randomId(), nowMs: Date.now() });

const linkTo = (boat: string): LogLink => {
  const at = `/api/boats/${encodeURIComponent(boat)}/log`;
  return {
    read: async () => {
      try {
        const response = await fetch(at);
        // the server and this page are built together
        return response.ok ? ((await response.json()) as { text: string }).text : undefined;
      } catch {
        return undefined;
      }
    },
    add: async (entries: readonly LogEntry[]) => {
      try {
        const body = JSON.stringify(entries);
        const response = await fetch(at, { method: 'POST', body, headers: { 'content-type': 'application/json' } });
        if (response.ok) return true;
        const { says }: { says?: string } = await response.json();
        return response.status < 500 ? (says ?? response.statusText) : undefined;
      } catch {
        return undefined;
      }
    },
  };
};

/** The browser’s own store; where it is barred or full, what is written stays as long as the page does. */
const shelf: Shelf = {
  get: (at) => {
    try {
      return localStorage.getItem(at);
    } catch {
      return null;
    }
  },
  set: (at, text) => {
    try {
      if (text === '') localStorage.removeItem(at);
      else localStorage.setItem(at, text);
    } catch {
      // as above
    }
  },
};

const stores = new Map<string, LogStore>();

/** The log of a boat of the folder, or of one opened by hand; one for all that ask. */
export const storeOf = (boat: string | undefined, name: string): LogStore => {
  const key = boat === undefined ? `by hand ${name}` : `folder ${boat}`;
  const known = stores.get(key);
  if (known !== undefined) return known;
  const store = startLogStore({
    name: key,
    shelf,
    ...(boat === undefined ? {} : { link: linkTo(boat) }),
    stamp,
  });
  stores.set(key, store);
  return store;
};

const nothing: LogState = { log: emptyLog, waiting: 0 };

/** The log of the boat that is open, and the one way to add to it. */
export interface OpenLog extends LogState {
  readonly log: BoatLog;
  readonly append: (entry: NewEntry) => void;
}

/**
 * The log of the boat that is open: what was found, ticked and noted aboard. An entry stands at once and is sent to the folder
 * behind it; a boat opened by hand keeps hers in this browser.
 *
 * @example const { log, append } = useBoatLog(boat.name); append({ kind: 'tick', of: 'trial/heading', done: true })
 */
export const useBoatLog = (boatName: string): OpenLog => {
  const store = storeOf(boatOfFolder(), boatName);
  const state = useSyncExternalStore(store.onChange, store.state, () => nothing);
  useEffect(() => {
    void store.sync();
    const timer = setInterval(() => void store.sync(), everyMs);
    return () => clearInterval(timer);
  }, [store]);
  return {
    ...state,
    append: (entry) => {
      store.append(entry);
      void store.sync();
    },
  };
};
