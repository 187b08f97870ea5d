import { useContext, useEffect, useSyncExternalStore } from 'react';
import { type BoatLog, emptyLog } from '../../../core/log/boat-log.ts';
import type { NewEntry } from '../../../core/log/new-entry.ts';
import { LookOnlyContext } from '../edit-context.ts';
import { boatOfFolder } from '../pictures/picture-keeper.ts';
import { store } from '../store/the-store.ts';
import { type LogLink, type LogState, type LogStore, type Shelf, startLogStore } from './log-store.ts';

/** How often the folder is looked at, for others may write there too. */
const everyMs = 15_000;

const randomId = (): string =>
  [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => (byte % 36).toString(36)).join('');

const stamp = (): { id: string; nowMs: number } => ({ id: randomId(), nowMs: Date.now() });

const linkTo = (boat: string): LogLink => ({
  read: () => store.readLog(boat),
  add: (entries) => store.addToLog(boat, entries),
});

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
  const made = startLogStore({
    name: key,
    shelf,
    ...(boat === undefined ? {} : { link: linkTo(boat) }),
    stamp,
  });
  stores.set(key, made);
  return made;
};

/** Forgets what of a log was still on its way: its boat is deleted. */
export const forgetWaiting = (boat: string): void => {
  stores.delete(`folder ${boat}`);
  shelf.set(`log folder ${boat}`, '');
};

const nothing: LogState = { log: emptyLog, waiting: 0, unread: 0 };

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
  const refuse = useContext(LookOnlyContext);
  const own = storeOf(boatOfFolder(), boatName);
  const state = useSyncExternalStore(own.onChange, own.state, () => nothing);
  useEffect(() => {
    void own.sync();
    const timer = setInterval(() => void own.sync(), everyMs);
    return () => clearInterval(timer);
  }, [own]);
  return {
    ...state,
    append: (entry) => {
      if (refuse !== undefined) return refuse();
      own.append(entry);
      void own.sync();
    },
  };
};
