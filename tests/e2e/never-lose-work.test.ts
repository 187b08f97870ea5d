import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'fairlead-kept-'));
const profile = mkdtempSync(join(tmpdir(), 'fairlead-profile-'));
const file = join(folder, 'sandpiper', 'sandpiper.boat.json');
const held = (): string => readFileSync(file, 'utf8');

/** A machine of two cores may be busy with other things. */
const soon = { timeout: 15_000 };

let server: ChildProcess;
let address = '';
let port = 0;

/** Starts the server; again on the port it had before, as a person starts it again. */
const startServer = async (): Promise<void> => {
  const program = join(root, 'dist/cli/main.js');
  server = spawn(process.execPath, [program, 'open', folder, '--port', String(port)], { cwd: root });
  address = await new Promise((resolve, reject) => {
    server.stdout?.on('data', (chunk: Buffer) => {
      const found = /http:\/\/127\.0\.0\.1:(\d+)/.exec(chunk.toString());
      if (found !== null) resolve(found[0]);
    });
    server.once('exit', () => reject(new Error('The server stopped at once.')));
  });
  port = Number(address.split(':').at(-1));
};

/** A browser whose store outlives it, as a person’s does. */
const startBrowser = (): Promise<BrowserContext> =>
  chromium.launchPersistentContext(profile, {
    executablePath: process.env.CHROME_PATH ?? '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking'],
    viewport: { width: 1440, height: 900 },
    reducedMotion: 'reduce',
  });

/** Kills every process of the browser at once, as a power cut does: those that were started with the profile. */
const killBrowser = (): void => {
  for (const name of readdirSync('/proc').filter((one) => /^\d+$/.test(one))) {
    const line = commandOf(name);
    if (line.includes(`--user-data-dir=${profile}`)) process.kill(Number(name), 'SIGKILL');
  }
};

const commandOf = (name: string): string => {
  try {
    return readFileSync(`/proc/${name}/cmdline`, 'utf8').replaceAll('\0', ' ');
  } catch {
    // it has ended meanwhile
    return '';
  }
};

let context: BrowserContext;
beforeAll(async () => {
  cpSync(join(root, 'examples'), folder, { recursive: true });
  await startServer();
  context = await startBrowser();
});
afterAll(async () => {
  await context.close();
  server.kill();
  for (const one of [folder, profile]) rmSync(one, { recursive: true, force: true, maxRetries: 5 });
});

const openBoat = async (): Promise<Page> => {
  const page = await context.newPage();
  await page.goto(`${address}/#/boat/sandpiper/boat`);
  await page.locator('.tape-field input').first().waitFor();
  return page;
};

const says = (page: Page, words: string | RegExp): Promise<void> =>
  page.locator('.edit-row p').filter({ hasText: words }).first().waitFor();

const tape = async (page: Page, metres: string): Promise<void> => {
  const field = page.locator('.tape-field input').first();
  await field.fill(metres);
  await field.press('Enter');
};

const taped = (metres: string) => `it is ${metres} m, taped.`;
const undoSays = (page: Page): Promise<string | null> =>
  page.getByRole('button', { name: /^undo/i }).first().getAttribute('aria-label');

test('a page loaded anew takes back what was done before', async () => {
  const before = held();
  const page = await openBoat();
  await tape(page, '3.21');
  await says(page, taped('3.21'));
  await expect.poll(held, soon).toContain('"valueM": 3.21');
  await page.reload();
  await page.locator('.tape-field input').first().waitFor();
  await expect.poll(() => undoSays(page), soon).toContain(taped('3.21'));
  await page.locator('.sheet-frame').focus();
  await page.keyboard.press('Control+z');
  await says(page, 'Taken back:');
  await expect.poll(held, soon).toBe(before);
  await page.close();
});

test('of two tabs the second follows, takes over when asked, and by itself when the first is closed', async () => {
  const [first, second] = [await openBoat(), await openBoat()];
  await says(second, 'Another tab works on this boat');
  await tape(first, '3.33');
  await expect.poll(held, soon).toContain('"valueM": 3.33');
  await second.locator('.known-lengths', { hasText: '3.33' }).waitFor({ state: 'attached' });
  await tape(second, '4.44');
  await says(second, 'Not done: another tab works on this boat.');
  await second.getByRole('button', { name: 'work here' }).click();
  await says(second, /^saved in/);
  await says(first, 'Another tab works on this boat');
  await expect.poll(() => undoSays(second), soon).toContain(taped('3.33'));
  await tape(second, '4.44');
  await expect.poll(held, soon).toContain('"valueM": 4.44');
  await second.close();
  await says(first, /^saved in/);
  await first.close();
});

test('a browser killed before the file was written opens with the edit, which can be taken back', async () => {
  const page = await openBoat();
  await says(page, /^saved in/);
  const before = held();
  // the server is gone first, so that nothing reaches the file
  server.kill('SIGKILL');
  await tape(page, '5.55');
  await says(page, /does not answer.*kept in this browser/);
  killBrowser();
  expect(held()).toBe(before);
  await startServer();
  context = await startBrowser();
  const again = await openBoat();
  await says(again, 'One change that had not reached the file was taken up.');
  await expect.poll(held, soon).toContain('"valueM": 5.55');
  await again.locator('.sheet-frame').focus();
  await again.keyboard.press('Control+z');
  await expect.poll(held, soon).toBe(before);
  await again.close();
});

test('a server that is back has what was changed while it was away', async () => {
  const page = await openBoat();
  await says(page, /^saved in/);
  server.kill('SIGKILL');
  await tape(page, '6.66');
  await says(page, 'saving is tried again');
  await startServer();
  await expect.poll(held, soon).toContain('"valueM": 6.66');
  await says(page, /^saved in .* at /);
  await page.close();
});

test('a damaged file is put back as this browser has her, and a newer one is looked at only', async () => {
  const before = held();
  writeFileSync(file, before.slice(0, before.length / 2));
  const page = await context.newPage();
  await page.goto(`${address}/#/boat/sandpiper/boat`);
  await page.locator('.refusal', { hasText: 'The file ends in the middle' }).waitFor();
  await page.getByRole('button', { name: /go on from this: As this browser has her/ }).click();
  await says(page, /^saved in/);
  expect(held()).toBe(before);
  const newer = before.replace('"version": 1', '"version": 2');
  writeFileSync(file, newer);
  await page.reload();
  await says(page, 'A newer Fairlead wrote this file, in version 2.');
  await tape(page, '7.77');
  await says(page, 'Not done: a newer Fairlead wrote this file');
  expect(held()).toBe(newer);
  await page.close();
});
