import type { PictureShelf } from '../store/shelf.ts';

const stack = 'pictures';

const answered = <Value>(request: IDBRequest<Value>): Promise<Value> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error('The browser’s store does not answer.'));
  });

let opened: Promise<IDBDatabase> | undefined;

const database = (): Promise<IDBDatabase> => {
  opened ??= (async () => {
    const request = indexedDB.open('fairlead-phone', 1);
    request.onupgradeneeded = () => request.result.createObjectStore(stack);
    return answered(request);
  })();
  // one that could not be opened may be the next time
  opened.catch(() => {
    opened = undefined;
  });
  return opened;
};

/** Done when it is on the disk, not when it is taken: only then may the entry of a photo stand. */
const written = async (change: (held: IDBObjectStore) => void): Promise<void> => {
  const transaction = (await database()).transaction(stack, 'readwrite');
  change(transaction.objectStore(stack));
  await new Promise<void>((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new Error('The browser’s store is full.'));
  });
};

/** Photos in the browser’s own store, as bytes with their type. */
export const browserPictures: PictureShelf = {
  put: async (hash, picture) => {
    try {
      const kept = { bytes: await picture.arrayBuffer(), type: picture.type };
      await written((held) => held.put(kept, hash));
      return true;
    } catch {
      return false;
    }
  },
  get: async (hash) => {
    const held = (await database()).transaction(stack).objectStore(stack);
    // reason: nothing else is ever put there
    const kept = (await answered(held.get(hash))) as { bytes: ArrayBuffer; type: string } | undefined;
    return kept === undefined ? undefined : new Blob([kept.bytes], { type: kept.type });
  },
  remove: async (hash) => {
    try {
      await written((held) => held.delete(hash));
    } catch {
      // it stays, and harms nobody
    }
  },
};
