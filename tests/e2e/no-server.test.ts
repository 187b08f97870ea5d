import { buffer } from 'node:stream/consumers';
import { strFromU8, unzipSync } from 'fflate';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { barriers, keepPicture, settled, windows } from './app-under-test.ts';
import { hostOfFiles } from './host-of-files.ts';

const soon = { timeout: 20_000 };

let host: Awaited<ReturnType<typeof hostOfFiles>>;
let browser: Browser;
beforeAll(async () => {
  host = await hostOfFiles('/some/folder/');
  browser = await chromium.connect(inject('browserAt'));
});
afterAll(async () => {
  await browser.close();
  host.close();
});

const complaints: string[] = [];

/** A page of a browser in which nothing of Fairlead was kept before. */
const newProfile = async (window: keyof typeof windows, light: string): Promise<Page> => {
  const context = await browser.newContext({
    viewport: windows[window],
    reducedMotion: 'reduce',
    acceptDownloads: true,
  });
  await context.addInitScript((kept) => localStorage.setItem('fairlead-theme', kept), light);
  const page = await context.newPage();
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  return page;
};

const isKept = (page: Page): Promise<void> =>
  page
    .locator('.save-line p')
    .filter({ hasText: /^kept in this browser/ })
    .waitFor();

/** The text of a file in a zip. */
const textIn = (zip: Uint8Array, name: string): string => {
  const found = new Map(Object.entries(unzipSync(zip))).get(name);
  if (found === undefined) throw new Error(`The zip holds no ${name}.`);
  return strFromU8(found);
};

/** All of a boat as the page hands it out. */
const exported = async (page: Page, boat: string): Promise<{ name: string; bytes: Buffer }> => {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: `export ${boat} with` }).click();
  const download = await coming;
  return { name: download.suggestedFilename(), bytes: await buffer(await download.createReadStream()) };
};

/** What a page says and draws of a boat’s plan: every line and balloon, how far each step is, and the order with its notes. */
const planShown = async (page: Page, boat: string): Promise<(string | null)[]> => {
  const app = page.url().replace(/#.*$/, '');
  await page.goto(`${app}#/boat/${boat}/lines`);
  await page.locator('.sheet-svg .balloon').first().waitFor();
  await settled(page);
  const drawing = await page.locator('.sheet-svg').first().innerHTML();
  await page.goto(`${app}#/boat/${boat}/buy`);
  await page.locator('#buy-order').waitFor();
  await settled(page);
  return [drawing, await page.locator('.course').textContent(), await page.locator('.margin').textContent()];
};

/** A change under way is planned, and kept. */
const changed = async (page: Page, does: () => Promise<void>): Promise<void> => {
  const before = await page.locator('.edit-says').textContent();
  await does();
  await page.waitForFunction((old) => document.querySelector('.edit-says')?.textContent !== old, before);
  await settled(page);
  await isKept(page);
};

/** Made up in one browser, for another. */
let tern: { readonly name: string; readonly bytes: Buffer; readonly made: readonly (string | null)[] };

test('a boat made up in a browser outlasts the page, and goes out in one file', async () => {
  const page = await newProfile('laptop', 'day');
  await page.goto(host.address);
  await page.getByRole('radio', { name: 'sloop, mast on deck' }).click();
  await page.getByLabel('Name').fill('Tern');
  await page.getByLabel('Length').fill('31 ft');
  await page.getByRole('button', { name: 'Make this boat' }).click();
  await page.waitForURL(/boat\/tern\/boat$/);
  await page.goto(`${host.address}#/boat/tern/kit`);
  for (const what of [/^10-inch multifunction display/, /^10 Hz position antenna/, /^Through-hull sensor for depth/]) {
    await page.locator('.kit-found').getByRole('button', { name: what }).click();
    await changed(page, () => page.locator('.kit-put').first().click());
  }
  await changed(page, () => page.getByRole('button', { name: /wire her so/ }).click());
  await page.goto(`${host.address}#/boat/tern/boat`);
  const field = page.locator('.tape-field input').first();
  await field.fill('9 ft 2 in');
  await changed(page, () => field.press('Enter'));
  await page.reload();
  await page.locator('.tape-field input').first().waitFor();
  const made = await planShown(page, 'tern');
  expect(made.join(' ')).toMatch(/\d of \d arrive/);
  await page.getByRole('link', { name: 'all boats' }).click();
  tern = { ...(await exported(page, 'Tern')), made };
  expect(tern.name).toBe('tern.zip');
  // what was edited before the page was loaded anew
  expect(textIn(tern.bytes, 'tern.boat.json')).toContain('"valueM": 2.794');
  await page.context().close();
}, 120_000);

test('with no server boats are kept in the browser, the app opens and plans with no network, and a boat comes in with one file', async () => {
  const page = await newProfile('laptop', 'day');
  await page.goto(host.address);
  await page.getByRole('button', { name: /^Gannet/ }).click();
  await settled(page);
  await isKept(page);

  // an edit outlasts the page
  await page.goto(`${host.address}#/boat/gannet/boat`);
  const field = page.locator('.tape-field input').first();
  await field.fill('2.36');
  await field.press('Enter');
  await page.getByText('it is 2.36 m, taped.').waitFor();
  await isKept(page);
  await page.reload();
  await page.locator('.tape-field input').first().waitFor();
  await page.getByRole('link', { name: 'all boats' }).click();
  await page.getByText('The whole app is kept on this machine').waitFor();
  expect(await barriers(page)).toEqual([]);
  await keepPicture(page, 'no-server-boats-laptop-day');

  // what needs a machine aboard says so
  await page.goto(`${host.address}#/boat/gannet/prove`);
  await page.getByText('A page from a web host may not listen to a bus.').waitFor();

  // the host is gone: all of the app is here
  host.switchOff();
  await page.reload();
  await page.goto(`${host.address}#/boat/gannet/binder`);
  await settled(page);
  const paper = page.waitForEvent('download', soon);
  await page.getByRole('button', { name: 'download PDF' }).click();
  const pdf = await buffer(await (await paper).createReadStream());
  expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
  expect(pdf.length).toBeGreaterThan(100_000);

  // all of her in one file
  await page.getByRole('link', { name: 'all boats' }).click();
  const { name, bytes } = await exported(page, 'Gannet');
  expect(name).toBe('gannet.zip');
  const text = textIn(bytes, 'gannet.boat.json');
  expect(text).toContain('2.36');

  // deleted after a question, and taken in again to the byte
  await page.getByRole('button', { name: 'delete Gannet' }).click();
  await page.getByText('All of her is in your last export.').waitFor();
  await page.getByRole('button', { name: 'delete Gannet' }).last().click();
  await page.getByText('There is no boat in this browser yet.').waitFor();
  await page.locator('input[type=file]').first().setInputFiles({ name, mimeType: 'application/zip', buffer: bytes });
  await page.getByRole('heading', { level: 1, name: 'Gannet' }).waitFor();
  await page.getByRole('link', { name: 'all boats' }).click();
  const again = await exported(page, 'Gannet');
  expect(textIn(again.bytes, 'gannet-2.boat.json')).toBe(text);

  // a boat that was made up in another browser is the same boat here
  const zip = { name: tern.name, mimeType: 'application/zip', buffer: tern.bytes };
  await page.locator('input[type=file]').first().setInputFiles(zip);
  await page.getByRole('heading', { level: 1, name: 'Tern' }).waitFor();
  expect(await planShown(page, 'tern')).toEqual(tern.made);
  await page.getByRole('link', { name: 'all boats' }).click();
  await page.getByRole('button', { name: 'export Tern with' }).waitFor();

  await page.setViewportSize(windows.phone);
  await page.evaluate(() => {
    document.documentElement.dataset.theme = 'night';
  });
  expect(await barriers(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(windows.phone.width);
  await keepPicture(page, 'no-server-boats-phone-night');
  // the browser itself reports a host that does not answer
  expect(complaints.filter((one) => !one.includes('ERR_'))).toEqual([]);
}, 120_000);
