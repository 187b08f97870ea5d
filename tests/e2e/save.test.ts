import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, barriers, keepPicture, openBoat, windows } from './app-under-test.ts';

/** A machine of two cores may be busy with other things. */
const soon = { timeout: 15_000 };

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const fileOf = (id: string): string => join(app.folder, id, `${id}.boat.json`);
const held = (id: string): string => readFileSync(fileOf(id), 'utf8');

/** Waits until the line under the top bar says how the boat stands with its file. */
const stands = (page: Page, words: string | RegExp): Promise<void> =>
  page.locator('.save-line p').filter({ hasText: words }).waitFor();

/** Tapes the first guessed length at the step Boat. */
const tape = async (page: Page, length: string): Promise<void> => {
  const field = page.locator('.tape-field input').first();
  await field.fill(length);
  await field.press('Enter');
};

const isSaved = /^saved in [a-z0-9-]+\.boat\.json/;

test('a taped length is saved by itself, is there when the page is loaded anew, and undone leaves the file as it was', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  await openBoat(app, page, 'sandpiper/boat');
  const before = held('sandpiper');
  await stands(page, isSaved);
  const guesses = await page.locator('.tape-field input:visible').count();
  await tape(page, 'long');
  await page.getByText('Write a length, for example').waitFor();
  await tape(page, '7 ft 9');
  await page.getByText('it is 2.362 m, taped.').waitFor();
  await stands(page, isSaved);
  expect(held('sandpiper')).toContain('2.362');
  expect(await page.locator('.tape-field input:visible').count()).toBe(guesses - 1);
  expect(await page.evaluate(() => document.activeElement?.closest('.margin') !== null)).toBe(true);
  await keepPicture(page, 'taped-laptop-day');
  await page.reload();
  await page.locator('.tape-field input').first().waitFor();
  expect(await page.locator('.tape-field input:visible').count()).toBe(guesses - 1);
  const taped = held('sandpiper');
  await tape(page, '3');
  await page.getByText('it is 3 m, taped.').waitFor();
  await stands(page, isSaved);
  await page.locator('.sheet-frame').focus();
  await page.keyboard.press('Control+z');
  await page.getByText('Taken back:').waitFor();
  await stands(page, isSaved);
  await expect.poll(() => held('sandpiper'), soon).toBe(taped);
  const backups = join(app.folder, 'sandpiper', 'sandpiper.backups');
  expect(readdirSync(backups).map((name) => readFileSync(join(backups, name), 'utf8'))).toContain(before);
  expect(app.complaints).toEqual([]);
});

test('a file that something else changed is put together with the edit made here, as one step', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  await openBoat(app, page, 'sandpiper/boat');
  const before = held('sandpiper');
  await page.locator('.known-lengths summary').click();
  await tape(page, '4.56');
  // before that is saved: a file that changed with nothing changed here would be read, and no step of undo
  writeFileSync(fileOf('sandpiper'), before.replace('"name": "Sandpiper"', '"name": "Sandpiper by hand"'));
  await page.getByRole('heading', { level: 1, name: 'Sandpiper by hand' }).waitFor();
  await stands(page, isSaved);
  expect(held('sandpiper')).toContain('"name": "Sandpiper by hand"');
  expect(held('sandpiper')).toContain('4.56');
  await page.locator('.sheet-frame').focus();
  await page.keyboard.press('Control+z');
  await page.getByRole('heading', { level: 1, name: 'Sandpiper', exact: true }).waitFor();
  // the browser itself reports the refused save
  expect(app.complaints.filter((one) => !one.includes('412'))).toEqual([]);
  app.complaints.length = 0;
});

test('what was changed here and in the file is asked, mine or theirs, and never decided silently', async () => {
  const page = await app.newPage({ window: 'phone', light: 'night' });
  await openBoat(app, page, 'sandpiper/boat');
  const label = (await page.locator('.tape-field label').first().textContent()) ?? '';
  await tape(page, '4.56');
  await expect.poll(() => held('sandpiper'), soon).toContain('"valueM": 4.56');
  await stands(page, isSaved);
  const saved = held('sandpiper');
  const byHand = saved.replace('"valueM": 4.56', '"valueM": 7.89');
  expect(byHand).not.toBe(saved);
  // both within one rest of the saver: the edit cannot reach the file first
  await page.locator('.known-lengths summary').click();
  const same = page.locator('.known-lengths .tape-field', { hasText: label }).locator('input');
  await same.fill('5.67');
  writeFileSync(fileOf('sandpiper'), byHand);
  await same.press('Enter');
  const clash = page.locator('.clash');
  await clash.waitFor();
  await stands(page, 'Choose below what holds');
  expect(held('sandpiper')).toBe(byHand);
  expect(await barriers(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(windows.phone.width);
  await clash.scrollIntoViewIfNeeded();
  await keepPicture(page, 'conflict-phone-night');
  expect(await clash.getByRole('button', { name: 'put together so' }).getAttribute('aria-disabled')).toBe('true');
  await clash
    .getByRole('radio', { name: /as in the file/ })
    .first()
    .check();
  await clash.getByRole('button', { name: 'put together so' }).click();
  await clash.waitFor({ state: 'detached' });
  await stands(page, isSaved);
  await expect.poll(() => held('sandpiper'), soon).toContain('"valueM": 7.89');
  app.complaints.length = 0;
});

test('an earlier state is looked at without changing anything, and restored as a step that can be undone', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  await openBoat(app, page, 'sandpiper/boat');
  const before = held('sandpiper');
  const guesses = await page.locator('.tape-field input:visible').count();
  await tape(page, '4.56');
  await expect.poll(() => held('sandpiper'), soon).toContain('"valueM": 4.56');
  const taped = held('sandpiper');
  await page.getByRole('button', { name: 'earlier states' }).click();
  const first = page.locator('.states li').first();
  await first.getByText(/^Then changed: .*: length\./).waitFor();
  expect(await barriers(page)).toEqual([]);
  await keepPicture(page, 'states-laptop-day');
  await first.getByRole('button', { name: /^Look at/ }).click();
  await stands(page, 'This is how she was until');
  await expect.poll(() => page.locator('.tape-field input:visible').count(), soon).toBe(guesses);
  await tape(page, '1.23');
  await page.getByText('Not done: this is an earlier state').waitFor();
  expect(held('sandpiper')).toBe(taped);
  await page.getByRole('button', { name: 'restore this state' }).click();
  await page.locator('.edit-says', { hasText: 'Go back to how she was until' }).waitFor();
  await expect.poll(() => held('sandpiper'), soon).toBe(before);
  await page.locator('.sheet-frame').focus();
  await page.keyboard.press('Control+z');
  await expect.poll(() => held('sandpiper'), soon).toBe(taped);
  expect(app.complaints).toEqual([]);
});

test('a boat opened by hand stays in the page until a copy is saved or it is kept in the folder', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  await page.goto(app.address);
  const own = held('sandpiper').replace('"name": "Sandpiper"', '"name": "Own boat"');
  const file = { name: 'own.boat.json', mimeType: 'application/json', buffer: Buffer.from(own) };
  await page.locator('input[type=file]').first().setInputFiles(file);
  await stands(page, 'opened by hand');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'save a copy' }).click();
  const copy = await download;
  expect(copy.suggestedFilename()).toBe('own-boat.boat.json');
  expect(await text(await copy.createReadStream())).toBe(own);
  await page.getByRole('button', { name: 'keep it in the folder' }).click();
  await stands(page, isSaved);
  expect(page.url()).toContain('#/boat/own-boat');
  expect(readFileSync(join(app.folder, 'own-boat.boat.json'), 'utf8')).toBe(own);
  expect(app.complaints).toEqual([]);
});

test('the list copies a boat under a free name', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  await page.goto(app.address);
  await page.getByRole('button', { name: 'copy Sandpiper' }).click();
  await page.getByRole('heading', { level: 1, name: 'Sandpiper, a copy' }).waitFor();
  expect(page.url()).toContain('#/boat/sandpiper-a-copy');
  await page.getByRole('link', { name: 'all boats' }).click();
  await page.getByText('sandpiper-a-copy.boat.json').waitFor();
  await keepPicture(page, 'boats-laptop-day');
  expect(app.complaints).toEqual([]);
});

test('an empty folder says what to do and starts from a demo boat', async () => {
  const empty = await appUnderTest({ demos: false });
  try {
    const page = await empty.newPage({ window: 'phone', light: 'day' });
    await page.goto(empty.address);
    await page.getByText('There is no boat in this folder yet.').waitFor();
    await page.locator('.demo-button').first().waitFor();
    expect(await barriers(page)).toEqual([]);
    await keepPicture(page, 'empty-phone-day');
    await page.getByRole('button', { name: /^Gannet/ }).click();
    await page.getByRole('heading', { level: 1, name: 'Gannet' }).waitFor();
    expect(readdirSync(empty.folder)).toEqual(['gannet.boat.json']);
    expect(empty.complaints).toEqual([]);
  } finally {
    await empty.close();
  }
});
