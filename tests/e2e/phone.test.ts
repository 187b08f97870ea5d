import type { ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { barriers, contrasts, keepPicture, windows } from './app-under-test.ts';
import { startServer } from './built-server.ts';
import { pastEdgePx, unseenFocus } from './looked-at.ts';

const examples = fileURLToPath(new URL('../../examples/', import.meta.url));
const soon = { timeout: 15_000 };

interface Phones {
  readonly port: number;
  readonly addresses: readonly string[];
  readonly code?: { readonly code: string };
  readonly devices: readonly { readonly id: string; readonly name: string }[];
}

let folder: string;
let browser: Browser;
let laptop: { server: ChildProcess; address: string };

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'fairlead-boats-'));
  cpSync(`${examples}sandpiper`, join(folder, 'sandpiper'), { recursive: true });
  laptop = await startServer(folder, '--lan');
  browser = await chromium.connect(inject('browserAt'));
});
afterAll(async () => {
  for (const context of browser.contexts()) await context.close();
  await browser.close();
  laptop.server.kill();
  rmSync(folder, { recursive: true, force: true });
});

const ask = async (path = '', method = 'GET'): Promise<Phones> => {
  const headers = { 'content-type': 'application/json', origin: laptop.address };
  const response = await fetch(`${laptop.address}/api/phones${path}`, { method, headers });
  // reason: the server and this test are of one version
  return (await response.json()) as Phones;
};

const logPath = (): string => join(folder, 'sandpiper/sandpiper.log.jsonl');
const logLines = (): readonly Record<string, unknown>[] =>
  (existsSync(logPath()) ? readFileSync(logPath(), 'utf8') : '')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as Record<string, unknown>);

/** The page for phones, opened by the link in the picture on the laptop, as a phone opens it. */
const openedPhone = async (): Promise<{ page: Page; complaints: string[] }> => {
  const { addresses, code } = await ask('/code', 'POST');
  const context = await browser.newContext({ viewport: windows.phone, hasTouch: true, reducedMotion: 'reduce' });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    // that nobody answers is told by the browser itself
    if (message.type() === 'error' && !message.text().includes('Failed to load resource'))
      complaints.push(message.text());
  });
  await page.goto(`${addresses[0]}/#pair=${code?.code}`);
  return { page, complaints };
};

const go = (page: Page, screen: string): Promise<void> => page.locator('nav button', { hasText: screen }).click();
const stands = (page: Page, words: RegExp): Promise<void> =>
  page.locator('.state p[role="status"]').filter({ hasText: words }).waitFor(soon);

/** Presses and fields lower than a thumb wants on a boat that moves. */
const lowTargets = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('button, input:not([type="file"]), select, textarea, summary')]
      .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 55.5)
      .map((one) => `${one.tagName} ${one.textContent}`),
  );

test('a phone without wifi for a while, over a page and a laptop started anew, sends each thing once, and the laptop takes over what it found', async () => {
  const { page, complaints } = await openedPhone();
  // plain http at the address of a machine: what a boat has
  expect(await page.evaluate(() => window.isSecureContext)).toBe(false);
  expect(page.url()).not.toContain('pair');
  await page.getByLabel(/^Name of this phone/).fill('Kim');
  await page.getByRole('button', { name: 'Pair' }).click();
  await page.getByRole('heading', { level: 1, name: 'Sandpiper' }).waitFor(soon);

  const job = page.locator('.row > .tick').first();
  await job.waitFor({ timeout: 30_000 });
  await job.click();
  await page.getByRole('checkbox', { checked: true }).first().waitFor();
  await stands(page, /^All sent/);
  expect([...(await barriers(page)), ...(await lowTargets(page))]).toEqual([]);
  await keepPicture(page, 'phone-today-day');

  await go(page, 'Tests');
  await page.locator('summary', { hasText: 'Bus:' }).first().click();
  const field = page.locator('.entry input').first();
  await field.fill('119');
  await field.press('Enter');
  await page.getByText(/^✗ 119 Ω\. Wrong: /).waitFor();
  await stands(page, /^All sent/);
  expect(logLines()).toMatchObject([
    { kind: 'tick', done: true, by: 'Kim' },
    { kind: 'reading', value: 119, by: 'Kim' },
  ]);
  expect([...(await barriers(page)), ...(await contrasts(page)), ...(await lowTargets(page))]).toEqual([]);
  await keepPicture(page, 'phone-tests-day');

  const { port } = await ask();
  laptop.server.kill('SIGKILL');
  await once(laptop.server, 'exit');
  await page.locator('.last').getByRole('button', { name: 'Undo' }).click();
  await page.getByText(/^✗ 119 Ω/).waitFor({ state: 'detached' });
  await go(page, 'Survey');
  await page.locator('summary:not(:has-text("open"))').or(page.locator('summary')).first().click();
  await page
    .getByRole('button', { name: /^It is so/ })
    .first()
    .click();
  const length = page.getByLabel(/^length by tape/).first();
  await length.fill('7 ft 9');
  await length.press('Enter');
  expect(await length.inputValue()).toBe('');
  await stands(page, /^3 wait until the laptop is heard again/);
  await page.getByRole('button', { name: 'night red' }).click();
  expect([...(await barriers(page)), ...(await unseenFocus(page)), ...(await lowTargets(page))]).toEqual([]);
  await page.setViewportSize({ width: 320, height: 640 });
  expect(await pastEdgePx(page)).toBe(0);
  await page.setViewportSize(windows.phone);
  await keepPicture(page, 'phone-survey-night');

  laptop = await startServer(folder, '--lan', '--lan-port', String(port));
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Sandpiper' }).waitFor(soon);
  await stands(page, /^All sent/);
  expect(logLines().map(({ kind }) => kind)).toEqual(['tick', 'reading', 'withdrawn', 'seen', 'measure']);
  expect(new Set(logLines().map(({ id }) => id)).size).toBe(5);

  const [device] = (await ask()).devices;
  await ask(`/${device?.id}`, 'DELETE');
  await go(page, 'Notes');
  await page.locator('textarea').fill('The gland at the mast is full.');
  await page.getByRole('button', { name: 'Write down' }).click();
  await stands(page, /^This phone is no longer paired; 1 waits here/);
  const { code } = await ask('/code', 'POST');
  await page.getByRole('button', { name: 'Pair it again' }).click();
  await page.getByLabel('Code on the laptop').fill(code?.code ?? '');
  await page.getByRole('button', { name: 'Pair', exact: true }).click();
  await stands(page, /^All sent/);
  expect(logLines().at(-1)).toMatchObject({ kind: 'note', by: 'Kim' });
  expect(complaints).toEqual([]);
  await page.context().close();

  const desk = await (await browser.newContext({ viewport: windows.laptop })).newPage();
  await desk.goto(`${laptop.address}/#/boat/sandpiper/boat`);
  const found = desk.locator('.found-aboard');
  await found.locator('p', { hasText: '2.36 m (7 ft 9 in), taped' }).waitFor(soon);
  expect(await barriers(desk)).toEqual([]);
  await found.evaluate((block) => block.scrollIntoView({ block: 'start' }));
  await keepPicture(desk, 'found-aboard-laptop-day');
  await found.getByRole('button', { name: 'Take all 2 over' }).click();
  await desk.getByRole('button', { name: /^undo: Take over what was found aboard/ }).waitFor(soon);
  await expect
    .poll(() => readFileSync(join(folder, 'sandpiper/sandpiper.boat.json'), 'utf8'), soon)
    .toContain('"valueM": 2.362');
  await found.waitFor({ state: 'detached' });
});

test('a phone paired by the figures on the laptop leaves a photo beside the boat, and is a stranger once it is revoked there', async () => {
  const { page, complaints } = await openedPhone();
  const desk = await (await browser.newContext({ viewport: windows.laptop })).newPage();
  await desk.goto(`${laptop.address}/#/boat/sandpiper/work`);
  const block = desk.locator('.phones-block');
  await block.getByRole('button', { name: 'another code' }).click();
  const earlier = await page.getByLabel('Code on the laptop').inputValue();
  const figures = block
    .locator('.phones-code .figure')
    .filter({ hasNotText: `${earlier.slice(0, 3)} ${earlier.slice(3)}` });
  await page.getByLabel('Code on the laptop').fill((await figures.textContent()) ?? '');
  expect([...(await barriers(desk)), ...(await contrasts(desk))]).toEqual([]);
  await block.evaluate((one) => one.scrollIntoView({ block: 'start' }));
  await keepPicture(desk, 'phones-laptop-day');
  await page.getByLabel(/^Name of this phone/).fill('Robin');
  await page.getByRole('button', { name: 'Pair' }).click();
  await block.getByText('Robin is paired.').waitFor(soon);
  await go(page, 'Survey');
  await page.locator('summary').first().click();
  const shot = await page.screenshot();
  await page
    .locator('input[type="file"]')
    .last()
    .setInputFiles({ name: 'shot.png', mimeType: 'image/png', buffer: shot });
  await page
    .locator('.last')
    .getByText(/^Photo: /)
    .waitFor();
  const photos = () => logLines().filter(({ kind }) => kind === 'photo');
  await expect.poll(() => photos().length, soon).toBe(1);
  const pictures = readdirSync(join(folder, 'sandpiper/sandpiper.files'));
  expect(photos().map(({ picture }) => `${(picture as { hash: string }).hash}.jpeg`)).toEqual(pictures);
  await stands(page, /^All sent/);
  await block.getByRole('button', { name: 'revoke Robin' }).click();
  await block.getByText('Robin then reads and writes nothing any more.').waitFor();
  await block.getByRole('button', { name: 'revoke Robin' }).click();
  await block.getByRole('button', { name: 'revoke Robin' }).waitFor({ state: 'detached' });
  await stands(page, /^This phone is no longer paired/);
  expect(complaints).toEqual([]);
});
