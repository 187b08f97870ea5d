/** What lies in the browser’s own storage, by what it goes by. */
export const drawers = {
  /** what is told of each boat, by id */
  boats: 'boats',
  /** the text of each, by id */
  texts: 'texts',
  /** the texts of earlier states, by id and state */
  states: 'states',
  /** the log of each, by id */
  logs: 'logs',
  /** the pictures of each, by id and hash */
  pictures: 'pictures',
  /** the texts of sheets kept for the next boat, by id */
  sheets: 'sheets',
  /** ids of boats that were deleted: no other takes their name, so nothing of one meets another */
  gone: 'gone',
} as const;

export type Drawer = (typeof drawers)[keyof typeof drawers];

const name = 'fairlead-boats';

/** What a request comes to. */
export const answerOf = <Value>(request: IDBRequest<Value>): Promise<Value> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

const opened = async (factory: IDBFactory): Promise<IDBDatabase> => {
  const request = factory.open(name, 1);
  request.onupgradeneeded = () => {
    for (const drawer of Object.values(drawers)) request.result.createObjectStore(drawer);
  };
  return answerOf(request);
};

const finished = (work: IDBTransaction): Promise<void> =>
  new Promise((resolve, reject) => {
    work.oncomplete = () => resolve();
    work.onabort = () => reject(work.error ?? new DOMException('', 'AbortError'));
  });

/**
 * Does something with some drawers, all of it or nothing: nobody else comes between, in whatever tab, and what is written is
 * on the disk before it counts. Throws as the browser does.
 */
export type AtDrawers = <Value>(
  open: readonly Drawer[],
  mode: 'readonly' | 'readwrite',
  work: (drawer: (name: Drawer) => IDBObjectStore) => Promise<Value>,
) => Promise<Value>;

/** The browser’s own storage for boats, opened when it is first used. */
export const boatBase = (factory: () => IDBFactory): AtDrawers => {
  let base: Promise<IDBDatabase> | undefined;
  const ready = async (): Promise<IDBDatabase> => {
    base ??= opened(factory());
    try {
      const found = await base;
      // a newer page of this program in another tab must not wait for this one
      found.onversionchange = () => {
        found.close();
        base = undefined;
      };
      found.onclose = () => {
        base = undefined;
      };
      return found;
    } catch (error) {
      base = undefined;
      throw error;
    }
  };
  return async (open, mode, work) => {
    const transaction = (await ready()).transaction(open, mode, { durability: 'strict' });
    const end = finished(transaction);
    try {
      const value = await work((drawer) => transaction.objectStore(drawer));
      await end;
      return value;
    } catch (error) {
      end.catch(() => undefined);
      try {
        transaction.abort();
      } catch {
        // it came to its end by itself
      }
      throw transaction.error ?? error;
    }
  };
};
