import type { BoatStore } from '../../../core/boat-store-shape.ts';
import { askToPersist } from '../kept-here/persistence.ts';
import { type BrowserStore, browserStore } from './browser-store.ts';
import { folderStore } from './folder-store.ts';

/** The server marks the page that it hands out; from any other host it comes as it was built. Asking would be one more wait. */
const isServed = (): boolean =>
  typeof document === 'undefined' ||
  document.querySelector('meta[name="fairlead-boats"]')?.getAttribute('content') === 'folder';

const factory = (): IDBFactory => {
  if (typeof indexedDB === 'undefined') throw new DOMException('', 'SecurityError');
  return indexedDB;
};

/** The browser is asked to promise to keep boats once there is one. */
const askingToPersist = (kept: BrowserStore): BrowserStore => ({
  ...kept,
  add: async (text) => {
    const added = await kept.add(text);
    if ('id' in added) void askToPersist();
    return added;
  },
});

/** The browser’s own storage where nobody serves this page but a host of files; undefined where boats are in a folder. */
export const browserKept: BrowserStore | undefined = isServed()
  ? undefined
  : askingToPersist(
      browserStore({
        factory,
        demo: (path) => fetch(new URL(`demo-boats/${path}`, document.baseURI)),
        nowMs: () => Date.now(),
      }),
    );

/** Where the boats of this page are kept. */
export const store: BoatStore =
  browserKept ?? folderStore({ at: '/api', fetch: (address, request) => fetch(address, request) });
