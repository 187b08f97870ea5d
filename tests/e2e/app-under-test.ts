import { type ChildProcess, spawn } from 'node:child_process';
import { copyFileSync, cpSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import AxeBuilder from '@axe-core/playwright';
import { type Browser, chromium, type Page } from 'playwright-core';
import { inject } from 'vitest';
import { faintWords } from './looked-at.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** A window to test in: a laptop at the chart table, a tablet at the helm, or a phone in a locker. */
export const windows = {
  laptop: { width: 1440, height: 900 },
  tablet: { width: 1024, height: 768 },
  phone: { width: 390, height: 844 },
} as const;

export interface PageWish {
  readonly window: keyof typeof windows;
  readonly light: 'day' | 'dusk' | 'night';
}

/** The built app served from a folder of boats, and a browser to look at it with. */
export interface AppUnderTest {
  readonly address: string;
  /** a fresh page with nothing remembered, and the demo boats put back, in place of the page before; whatever it logs as an error is kept in `complaints` */
  readonly newPage: (wish: PageWish) => Promise<Page>;
  /** a page as wished that stands since the last `newPage`, gone back to the list of boats; a fresh one where there is none */
  readonly samePage: (wish: PageWish) => Promise<Page>;
  /** puts a copy of a demo boat into the folder, which no page has seen; comes back with its id */
  readonly copyOf: (boat: string) => string;
  /** the folder of boats, the test's own */
  readonly folder: string;
  /** errors that any page logged or threw */
  readonly complaints: string[];
  readonly close: () => Promise<void>;
}

/** Starts the built server on a folder of boats, with what else is said at its start, and waits until it says where it is. */
export const startServer = async (
  folder: string,
  ...said: readonly string[]
): Promise<{ server: ChildProcess; address: string }> => {
  const program = `${root}dist/cli/main.js`;
  if (!existsSync(program)) throw new Error('The app is not built: run npm run build first.');
  const server = spawn(process.execPath, [program, 'open', folder, '--port', '0', ...said], { cwd: root });
  const address = await new Promise<string>((resolve, reject) => {
    let told = '';
    const listen = (chunk: Buffer): void => {
      told += chunk.toString();
      const found = /http:\/\/127\.0\.0\.1:\d+/.exec(told);
      if (found !== null) resolve(found[0]);
    };
    server.stdout.on('data', listen);
    server.stderr.on('data', listen);
    server.once('exit', () => reject(new Error(`The server stopped at once and said: ${told}`)));
  });
  return { server, address };
};

/** A save that is under way would land in the boats that are put back; a page that cannot save is not waited for long. */
const saveDone = (page: Page): Promise<unknown> =>
  page
    .locator('.save-line', { hasText: /^saving/ })
    .waitFor({ state: 'detached', timeout: 3_000 })
    .catch(() => undefined);

/** A page of its own with nothing remembered, whose errors are taken down. */
const pageOf = async (browser: Browser, { window, light }: PageWish, complaints: string[]): Promise<Page> => {
  const context = await browser.newContext({
    viewport: windows[window],
    hasTouch: window !== 'laptop',
    reducedMotion: 'reduce',
  });
  await context.addInitScript((kept) => localStorage.setItem('fairlead-theme', kept), light);
  // somebody who has read the hints; the journey of a newcomer calls them back
  await context.addInitScript(() => {
    localStorage.getItem('fairlead-hints-gone') ??
      localStorage.setItem('fairlead-hints-gone', 'next kit table note sheet pull finder');
  });
  const page = await context.newPage();
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  return page;
};

/** Starts the built server on a folder of the test's own, which goes with it, and takes its pages from the browser of the run. */
export const appUnderTest = async ({ demos = true }: { demos?: boolean } = {}): Promise<AppUnderTest> => {
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-boats-'));
  // the app saves what is edited, so every page starts from the demo boats as they come
  const putBack = (): void => {
    if (demos) cpSync(`${root}examples`, folder, { recursive: true });
  };
  putBack();
  const { server, address } = await startServer(folder);
  const browser = await chromium.connect(inject('browserAt'));
  const complaints: string[] = [];
  const anotherPage = (wish: PageWish): Promise<Page> => pageOf(browser, wish, complaints);
  const standing = new Map<string, Page>();
  let copies = 0;
  return {
    address,
    folder,
    complaints,
    samePage: async (wish) => {
      const name = `${wish.window} ${wish.light}`;
      const page = standing.get(name);
      if (page === undefined) {
        const fresh = await anotherPage(wish);
        standing.set(name, fresh);
        return fresh;
      }
      await page.emulateMedia({ media: 'screen' });
      // what lies under the mouse would be lit
      await page.mouse.move(0, 0);
      await page.goto(`${address}/#/`);
      await page.locator('.boats a').first().waitFor();
      return page;
    },
    copyOf: (boat) => {
      copies += 1;
      const id = `${boat}-${copies}`;
      copyFileSync(`${root}examples/${boat}/${boat}.boat.json`, join(folder, `${id}.boat.json`));
      return id;
    },
    newPage: async (wish) => {
      standing.clear();
      for (const old of browser.contexts()) {
        await Promise.all(old.pages().map(saveDone));
        await old.close();
      }
      putBack();
      const page = await anotherPage(wish);
      standing.set(`${wish.window} ${wish.light}`, page);
      return page;
    },
    close: async () => {
      await browser.close();
      server.kill();
      rmSync(folder, { recursive: true, force: true });
    },
  };
};

/** Waits until the whole plan stands: a quick one that stands in for it is not the last word. */
export const settled = (page: Page): Promise<void> =>
  page.locator('.margin[aria-busy="false"] .progress:empty').waitFor({ state: 'attached', timeout: 60_000 });

/** Opens a boat of the folder and waits until its plan is settled. */
export const openBoat = async (app: AppUnderTest, page: Page, route = 'gannet'): Promise<void> => {
  await page.goto(`${app.address}/#/boat/${route}`);
  await page.locator('.sheet-svg .balloon').first().waitFor();
  await settled(page);
};

/**
 * Opens a copy of a boat that nobody has touched in a page that stands already, which takes a quarter of the time of a fresh one:
 * for tests that neither look at files by the boat’s own name nor mind what a page remembers of the one who reads.
 */
export const openAnother = async (app: AppUnderTest, wish: PageWish, route = 'gannet'): Promise<Page> => {
  const page = await app.samePage(wish);
  const [boat = '', ...step] = route.split('/');
  await openBoat(app, page, [app.copyOf(boat), ...step].join('/'));
  return page;
};

/** Asks axe for violations only, as the long lists of what is well take it twice the time; no page here holds frames. */
const asked = async (page: Page, asks: Parameters<AxeBuilder['options']>[0]): Promise<readonly string[]> => {
  // a page that has been asked before has axe in it, and to read it in once more takes as long as many a rule
  const isHere = await page.evaluate(() => 'axe' in globalThis);
  const axe = new AxeBuilder({ page, ...(isHere ? { axeSource: ';' } : {}) })
    .setLegacyMode(true)
    .options({ resultTypes: ['violations'], ...asks });
  const { violations } = await axe.analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
};

/** What stands in the way of people who use the page by keyboard or by ear, as far as axe knows, and words too faint. */
export const barriers = async (page: Page): Promise<readonly string[]> => [
  ...(await asked(page, { rules: { 'color-contrast': { enabled: false } } })),
  ...(await faintWords(page)),
];

/** Words too faint on whatever lies under them, as axe finds them: it takes seconds, and is done once for each screen. */
export const contrasts = (page: Page): Promise<readonly string[]> => asked(page, { runOnly: ['color-contrast'] });

/** Keeps a picture of a page under dist/pictures, for a person to look at. */
export const keepPicture = async (page: Page, name: string): Promise<void> => {
  await mkdir(`${root}dist/pictures`, { recursive: true });
  await page.screenshot({ path: `${root}dist/pictures/${name}.png` });
};
