import { copyFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { inject } from 'vitest';
import { ownServer, root } from './built-server.ts';
import { faintWords } from './looked-at.ts';

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
  /** a fresh page with nothing remembered, and the demo boats put back, in place of the fresh page before; whatever it logs as an error is kept in `complaints` */
  readonly newPage: (wish: PageWish) => Promise<Page>;
  /** a page as wished that stands from test to test, gone back to the list of boats */
  readonly samePage: (wish: PageWish) => Promise<Page>;
  /** puts a copy of a demo boat into the folder, which no page has seen; comes back with its id */
  readonly copyOf: (boat: string) => string;
  /** the folder of boats, empty but for the demo boats when a file begins */
  readonly folder: string;
  /** errors that any page logged or threw */
  readonly complaints: string[];
  readonly close: () => Promise<void>;
}

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

/** A page that stands from test to test, and what it remembered at first of the one who reads. */
interface Standing {
  readonly page: Page;
  readonly window: PageWish['window'];
  readonly choices: string;
}

/** A server with a browser that looks at it, and the pages that stand. */
const startLook = async (demos: boolean) => {
  const server = await ownServer({ demos });
  const browser = await chromium.connect(inject('browserAt'));
  const complaints: string[] = [];
  return { server, browser, complaints, standing: new Map<string, Standing>(), copies: { made: 0 } };
};
type Look = Awaited<ReturnType<typeof startLook>>;

/** The demo boats are looked at by one server and in pages that stand for all files that a process tests, as to start them takes longer than many a test. */
let shared: Promise<Look> | undefined;

/** What a page remembers of the one who reads, in whatever boat: units, lights, which picture is seen. */
const choicesOf = (page: Page): Promise<string> =>
  page.evaluate(() =>
    JSON.stringify(
      Object.entries(localStorage)
        // what is remembered of one boat has her name behind a space
        .filter(([key]) => !key.includes(' '))
        .sort(),
    ),
  );

/** Goes back to the list of boats in a page that stands, seen as it was at first. */
const goToBoats = async (
  page: Page,
  { window, address }: { window: PageWish['window']; address: string },
): Promise<void> => {
  await saveDone(page);
  await page.setViewportSize(windows[window]);
  await page.emulateMedia({ media: 'screen' });
  // what lies under the mouse would be lit
  await page.mouse.move(0, 0);
  await page.goto(`${address}/#/`);
  await page.locator('.boats a').first().waitFor();
};

/** The built server on the demo boats, and pages in the browser of the run; without the demo boats, a server of the test's own. */
export const appUnderTest = async ({ demos = true }: { demos?: boolean } = {}): Promise<AppUnderTest> => {
  if (demos) shared ??= startLook(true);
  const look = await (demos && shared !== undefined ? shared : startLook(false));
  const { server, browser, complaints, standing, copies } = look;
  const { address, folder } = server;
  const stands = (): ReadonlySet<BrowserContext> => new Set([...standing.values()].map(({ page }) => page.context()));
  const shutOthers = async (): Promise<void> => {
    for (const context of browser.contexts().filter((one) => !stands().has(one))) {
      await Promise.all(context.pages().map(saveDone));
      await context.close();
    }
  };
  return {
    address,
    folder,
    complaints,
    samePage: async (wish) => {
      const name = `${wish.window} ${wish.light}`;
      const stood = standing.get(name);
      const page = stood?.page ?? (await pageOf(browser, wish, complaints));
      await goToBoats(page, { address, window: wish.window });
      if (stood === undefined) standing.set(name, { page, window: wish.window, choices: await choicesOf(page) });
      return page;
    },
    copyOf: (boat) => {
      copies.made += 1;
      const id = `${boat}-${copies.made}`;
      copyFileSync(`${root}examples/${boat}/${boat}.boat.json`, join(folder, `${id}.boat.json`));
      return id;
    },
    newPage: async (wish) => {
      await shutOthers();
      // the app saves what is edited
      server.putBack();
      return pageOf(browser, wish, complaints);
    },
    close: async () => {
      await shutOthers();
      if (!demos) {
        await browser.close();
        server.end();
        return;
      }
      // the next file finds all of it as the first one did
      for (const [name, { page, window, choices }] of standing) {
        await goToBoats(page, { address, window });
        if ((await choicesOf(page)) !== choices) standing.delete(name);
      }
      await shutOthers();
      server.empty();
      complaints.length = 0;
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
 * for tests that do not mind what a page remembers of the one who reads; `boatOn` says under which name her files stand.
 */
export const openAnother = async (app: AppUnderTest, wish: PageWish, route = 'gannet'): Promise<Page> => {
  const page = await app.samePage(wish);
  const [boat = '', ...step] = route.split('/');
  await openBoat(app, page, [app.copyOf(boat), ...step].join('/'));
  return page;
};

/** The id of the boat that a page has open. */
export const boatOn = (page: Page): string => /^#\/boat\/([^/]+)/.exec(new URL(page.url()).hash)?.[1] ?? '';

/** Asks axe for violations only, as the long lists of what is well take it twice the time; no page here holds frames. */
const asked = async (page: Page, asks: Parameters<AxeBuilder['options']>[0]): Promise<readonly string[]> => {
  // a page that has been asked before has axe in it, and to read it in once more takes as long as many a rule
  const isHere = await page.evaluate(() => 'axe' in globalThis);
  // what an element looks like in full is never told, and to write that down takes a tenth of the time
  const axe = new AxeBuilder({ page, ...(isHere ? { axeSource: 'axe.configure({ noHtml: true });' } : {}) })
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

/** Waits until what a page is about to draw is drawn. */
const drawn = (page: Page): Promise<unknown> =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));

/** Keeps a picture of a page under dist/pictures, for a person to look at, where KEEP_PICTURES is set; what it would show stands then. */
export const keepPicture = async (page: Page, name: string): Promise<void> => {
  await drawn(page);
  if (process.env.KEEP_PICTURES === undefined) return;
  await mkdir(`${root}dist/pictures`, { recursive: true });
  await page.screenshot({ path: `${root}dist/pictures/${name}.png` });
};
