import { type BoatKeeper, isKeptBoat, type KeptBoat, recordMake } from './kept-boat.ts';

const name = 'fairlead';
const boats = 'boats';
/** The texts of files stand apart: they change with each save, not with each edit. */
const files = 'files';

const answerOf = <Value>(request: IDBRequest<Value>): Promise<Value> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error('The browser keeps nothing.'));
  });

const opened = (): Promise<IDBDatabase> => {
  const request = indexedDB.open(name, 1);
  request.onupgradeneeded = () => {
    for (const store of [boats, files]) request.result.createObjectStore(store);
  };
  return answerOf(request);
};

const finished = (work: IDBTransaction): Promise<void> =>
  new Promise((resolve, reject) => {
    work.oncomplete = () => resolve();
    work.onabort = () => reject(work.error ?? new Error('The browser keeps nothing.'));
  });

/** What is written for a boat: all but the text of its file. */
type Record = Omit<KeptBoat, 'key' | 'file'> & { readonly tag: string; readonly make: number };

const written = (work: IDBTransaction, { key, file, ...rest }: KeptBoat, isNewFile: boolean): void => {
  const record: Record = { ...rest, tag: file.tag, make: recordMake, atMs: Date.now() };
  work.objectStore(boats).put(record, key);
  if (isNewFile) work.objectStore(files).put(file, key);
};

/** Both parts of what is kept of a boat. */
const partsOf = (work: IDBTransaction, key: string): Promise<[unknown, unknown]> =>
  Promise.all([answerOf(work.objectStore(boats).get(key)), answerOf(work.objectStore(files).get(key))]);

const read = async (base: IDBDatabase, key: string): Promise<unknown> => {
  const [record, file] = await partsOf(base.transaction([boats, files], 'readonly'), key);
  if (record === undefined) return undefined;
  if (typeof record !== 'object' || record === null || !('tag' in record)) return record;
  const { tag, ...rest } = record;
  const isWhole = typeof file === 'object' && file !== null && 'tag' in file && file.tag === tag;
  return { key, ...rest, ...(isWhole ? { file } : {}) };
};

const setAside = async (base: IDBDatabase, key: string): Promise<void> => {
  const work = base.transaction([boats, files], 'readwrite', { durability: 'strict' });
  const [record, file] = await partsOf(work, key);
  const aside = `${key} aside ${Date.now()}`;
  work.objectStore(boats).put(record, aside);
  work.objectStore(files).put(file, aside);
  for (const store of [boats, files]) work.objectStore(store).delete(key);
  await finished(work);
};

/** Forgets all that is kept of a boat, what was set aside included: she is deleted. */
export const forgetKept = async (key: string): Promise<void> => {
  const base = await opened();
  const work = base.transaction([boats, files], 'readwrite');
  const aside = IDBKeyRange.bound(`${key} aside `, `${key} aside \uFFFF`);
  for (const store of [boats, files]) {
    work.objectStore(store).delete(key);
    work.objectStore(store).delete(aside);
  }
  await finished(work);
  base.close();
};

/** Keeps boats in the browser’s own store, each write through to the disk before it counts. */
export const boatKeeper = (): BoatKeeper => {
  let base: Promise<IDBDatabase> | undefined;
  const ready = (): Promise<IDBDatabase> => {
    base ??= opened();
    return base;
  };
  const tags = new Map<string, string>();
  return {
    read: async (key) => {
      const kept = await read(await ready(), key);
      if (isKeptBoat(kept)) tags.set(key, kept.file.tag);
      return kept;
    },
    setAside: async (key) => {
      await setAside(await ready(), key);
      tags.delete(key);
    },
    keep: async (boat) => {
      const work = (await ready()).transaction([boats, files], 'readwrite', { durability: 'strict' });
      const isNewFile = tags.get(boat.key) !== boat.file.tag;
      written(work, boat, isNewFile);
      await finished(work);
      tags.set(boat.key, boat.file.tag);
    },
  };
};
