import { boatLog } from '../../../core/log/boat-log.ts';
import type { LogEntry } from '../../../core/log/log-entry.ts';
import { type NewEntry, stampEntry } from '../../../core/log/new-entry.ts';
import type { PhoneSheet } from '../../../papers/phone/phone-sheet.ts';
import type { Heard } from './phone-link.ts';
import type { Again, PhoneState, PhoneStore, PhoneStoreParts, Standing } from './phone-state.ts';
import { sendEntries, sendPhotos } from './send-waiting.ts';
import { keysOf } from './shelf.ts';
import { entriesIn, waitingEntries } from './waiting-entries.ts';

interface Read {
  readonly text: string;
  readonly tag: string | undefined;
}

const sheetIn = (text: string | undefined): PhoneSheet | undefined => {
  try {
    // reason: it comes from the laptop that served this page, made by the same program
    return text === undefined ? undefined : (JSON.parse(text) as PhoneSheet);
  } catch {
    return undefined;
  }
};

const againOf = (told: Heard<unknown>): Again =>
  told.kind === 'unheard' && told.afterS !== undefined ? { afterS: told.afterS } : {};

/** Work that is begun only when it is over; who asks meanwhile waits for the same. */
const oneAtATime = <Result>(work: () => Promise<Result>): (() => Promise<Result>) => {
  let running: Promise<Result> | undefined;
  return () => {
    running ??= work().finally(() => {
      running = undefined;
    });
    return running;
  };
};

/**
 * Starts the store of one boat. What is written stands on the shelf before it shows, under a key of its own, and leaves it
 * only when it was read in the laptop’s log: a link that loses, doubles and delays, a page or a laptop that goes dark at any
 * moment, and two tabs lose nothing and double nothing.
 */
export const startPhoneStore = ({ boat, shelf, pictures, link, nowMs, newId }: PhoneStoreParts): PhoneStore => {
  const keys = keysOf(boat);
  const entries = waitingEntries(shelf, boat);
  let log: Read = { text: shelf.get(keys.log) ?? '', tag: undefined };
  let onLaptop: readonly LogEntry[] = entriesIn(log.text);
  let sheet = sheetIn(shelf.get(keys.sheet));
  let sheetSays: string | undefined;
  let sheetTag: string | undefined;
  let standing: Standing = 'asking';
  let says: string | undefined;
  const listeners = new Set<() => void>();

  const made = (): PhoneState => {
    const known = new Set(onLaptop.map(({ id }) => id));
    const waiting = entries.list().filter(({ id }) => !known.has(id));
    const heard = Number(shelf.get(keys.heard) ?? Number.NaN);
    return {
      log: boatLog([...onLaptop, ...waiting]),
      waiting: new Set(waiting.map(({ id }) => id)),
      aside: entries.aside(),
      standing,
      ...(Number.isNaN(heard) ? {} : { heardAtMs: heard }),
      ...(says === undefined ? {} : { says }),
      ...(sheet === undefined ? {} : { sheet }),
      ...(sheetSays === undefined ? {} : { sheetSays }),
    };
  };
  let state = made();
  const changed = (): void => {
    state = made();
    for (const listener of listeners) listener();
  };

  /** The bytes of a photo are let go when no entry that waits needs them any more. */
  const letPictureGo = (entry: LogEntry): void => {
    if (entry.kind !== 'photo') return;
    const { hash } = entry.picture;
    const isWanted = entries.list().some((other) => other.kind === 'photo' && other.picture.hash === hash);
    if (!isWanted) void pictures.remove(hash);
  };

  const takeIn = (read: Read): void => {
    log = read;
    onLaptop = entriesIn(read.text);
    // half a memory would be worse than none: it is read again
    if (!shelf.set(keys.log, read.text)) shelf.remove(keys.log);
    const known = new Set(onLaptop.map(({ id }) => id));
    const sent = entries.list().filter(({ id }) => known.has(id));
    entries.remove(new Set(sent.map(({ id }) => id)));
    for (const entry of sent) letPictureGo(entry);
  };

  const stands = (answer: Heard<unknown>): void => {
    standing = answer.kind;
    says = answer.kind === 'refused' || answer.kind === 'unheard' ? answer.says : undefined;
    if (answer.kind === 'heard') shelf.set(keys.heard, String(nowMs()));
  };

  const readLog = async (): Promise<Heard<unknown>> => {
    const read = await link.log(log.tag);
    if (read.kind === 'heard') takeIn(read.value === 'as before' ? log : read.value);
    return read;
  };

  const readSheet = async (): Promise<void> => {
    const asked = await link.sheet(sheetTag);
    const saysNow = asked.kind === 'refused' || asked.kind === 'unheard' ? asked.says : undefined;
    const isOther = saysNow !== sheetSays;
    sheetSays = saysNow;
    if (isOther) changed();
    if (asked.kind !== 'heard' || asked.value === 'as before') return;
    sheet = sheetIn(asked.value.text);
    sheetTag = asked.value.tag;
    shelf.set(keys.sheet, asked.value.text);
    changed();
  };

  const sheetOnce = oneAtATime(readSheet);

  const syncOnce = async (): Promise<Again> => {
    const sent = await sendEntries({ entries, pictures, link });
    // entries that are refused are put aside one by one, so that what stands here is heard, or nobody answered
    const told = sent.kind === 'heard' ? await readLog() : sent;
    stands(told);
    changed();
    // what is to be done may take the laptop seconds to plan: no tick waits for it
    if (told.kind === 'heard') void sheetOnce();
    return againOf(told);
  };

  const photosOnce = async (): Promise<Again> => {
    const told = await sendPhotos({ entries, pictures, link });
    changed();
    return againOf(told);
  };

  const put = (entry: NewEntry): string | undefined => {
    const written = stampEntry(state.log, entry, { id: newId(), nowMs: nowMs() });
    if (!entries.put(written)) return undefined;
    changed();
    return written.id;
  };

  return {
    state: () => state,
    onChange(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    write: put,
    writePhoto: async (photo, bytes) => ((await pictures.put(photo.picture.hash, bytes)) ? put(photo) : undefined),
    dropAside(id) {
      const dropped = entries.aside().find(({ entry }) => entry.id === id);
      entries.dropAside(id);
      if (dropped !== undefined) letPictureGo(dropped.entry);
      changed();
    },
    lookAgain() {
      const text = shelf.get(keys.log);
      // what another tab read; it is asked for anew with the next sync
      if (text !== undefined && text !== log.text) {
        log = { text, tag: undefined };
        onLaptop = entriesIn(text);
      }
      changed();
    },
    sync: oneAtATime(syncOnce),
    sendPhotos: oneAtATime(photosOnce),
  };
};
