import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { IDBFactory, IDBKeyRange, IDBObjectStore } from 'fake-indexeddb';
import { onTestFinished, vi } from 'vitest';
import type { BoatStore } from '../src/core/boat-store-shape.ts';
import { boatFolder } from '../src/node/boat-folder.ts';
import { demoFiles } from '../src/node/demo-files.ts';
import { tempFolder } from '../src/node/files/temp-folder.test-helper.ts';
import { serve } from '../src/server/serve.ts';
import { type BrowserStore, browserStore } from '../src/web/app/store/browser-store.ts';
import { folderStore } from '../src/web/app/store/folder-store.ts';

const root = join(import.meta.dirname, '..');
const examples = join(root, 'examples');

/** A place for boats with nothing in it yet, and what a test does to it from outside. */
export interface EmptyStore {
  readonly store: BoatStore;
  /** the same place, as another page has it */
  readonly other: BoatStore;
  /** from now on nothing of this boat can be written */
  readonly bar: (id: string) => void;
  /** what holds this boat is hit by a fault of the disk, and holds this text now */
  readonly damage: (id: string, text: string) => Promise<void>;
}

/** The real server on an empty folder, and two pages that ask it. */
export const emptyFolder = async (): Promise<EmptyStore> => {
  const [appFolder, folder] = [tempFolder(), tempFolder()];
  const folders = { boats: boatFolder(folder), demos: boatFolder(examples) };
  const { port, close } = await serve({ appFolder, folders, port: 0 });
  onTestFinished(close);
  const origin = `http://127.0.0.1:${port}`;
  // a browser names the page that asks; here nobody else does
  const page = (): BoatStore =>
    folderStore({
      at: `${origin}/api`,
      fetch: (address, request = {}) =>
        fetch(address, { ...request, headers: { ...(request.headers as Record<string, string>), origin } }),
    });
  const bar = (id: string): void => {
    for (const inTheWay of [`${id}.backups`, `${id}.files`]) {
      rmSync(join(folder, inTheWay), { recursive: true, force: true });
      writeFileSync(join(folder, inTheWay), '');
    }
    rmSync(join(folder, `${id}.log.jsonl`), { force: true });
    mkdirSync(join(folder, `${id}.log.jsonl`));
  };
  const damage = async (id: string, text: string): Promise<void> =>
    writeFileSync(join(folder, `${id}.boat.json`), text);
  return { store: page(), other: page(), bar, damage };
};

let demos: ReturnType<typeof demoFiles> | undefined;

/** The demo boats as a host of files hands them out. */
const fromHost = async (path: string): Promise<Response> => {
  demos ??= demoFiles(examples);
  const found = (await demos).get(decodeURIComponent(path));
  return found === undefined ? new Response('', { status: 404 }) : new Response(found as BodyInit);
};

/** An empty storage of a browser, and two pages of it. */
export const emptyBrowser = async (): Promise<
  EmptyStore & { readonly store: BrowserStore; readonly all: IDBFactory }
> => {
  vi.stubGlobal('IDBKeyRange', IDBKeyRange);
  onTestFinished(() => {
    vi.unstubAllGlobals();
    vi.restoreAllMocks();
  });
  const all = new IDBFactory();
  const page = (): BrowserStore =>
    browserStore({ factory: () => all as globalThis.IDBFactory, demo: fromHost, nowMs: () => Date.now() });
  const bar = (): void => {
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('The quota is used up.', 'QuotaExceededError');
    });
  };
  const damage = async (id: string, text: string): Promise<void> => {
    const opened = all.open('fairlead-boats');
    await new Promise((done) => {
      opened.onsuccess = done;
    });
    const work = opened.result.transaction(['texts'], 'readwrite');
    work.objectStore('texts').put(text, id);
    await new Promise((done) => {
      work.oncomplete = done;
    });
    opened.result.close();
  };
  return { store: page(), other: page(), bar, damage, all };
};

/** The text of a demo boat as it lies in the project. */
export const demoText = (id: string): string => readFileSync(join(examples, id, `${id}.boat.json`), 'utf8');
