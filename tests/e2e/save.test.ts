import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, barriers, keepPicture, openBoat, windows } from './app-under-test.ts';

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

const exactly = (words: string): RegExp => new RegExp(`^${words}$`);

test('a taped length is saved by itself, is there when the page is loaded anew, and undone leaves the file as it was', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  await openBoat(app, page, 'gannet/boat');
  const before = held('gannet');
  await stands(page, exactly('saved'));
  const guesses = await page.locator('.tape-field input:visible').count();
  await tape(page, 'long');
  await page.getByText('Write a length, for example').waitFor();
  await tape(page, '7 ft 9');
  await page.getByText('it is 2.362 m, taped.').waitFor();
  await stands(page, exactly('saved'));
  expect(held('gannet')).toContain('2.362');
  expect(await page.locator('.tape-field input:visible').count()).toBe(guesses - 1);
  expect(await page.evaluate(() => document.activeElement?.closest('.margin') !== null)).toBe(true);
  await keepPicture(page, 'taped-laptop-day');
  await page.reload();
  await page.locator('.tape-field input').first().waitFor();
  expect(await page.locator('.tape-field input:visible').count()).toBe(guesses - 1);
  const taped = held('gannet');
  await tape(page, '3');
  await page.getByText('it is 3 m, taped.').waitFor();
  await stands(page, exactly('saved'));
  await page.locator('.sheet-frame').focus();
  await page.keyboard.press('Control+z');
  await page.getByText('Taken back:').waitFor();
  await stands(page, exactly('saved'));
  await expect.poll(() => held('gannet')).toBe(taped);
  const backups = join(app.folder, 'gannet', 'gannet.backups');
  expect(readdirSync(backups).map((name) => readFileSync(join(backups, name), 'utf8'))).toContain(before);
  expect(app.complaints).toEqual([]);
});

test('a file that something else changed is not saved over; it is loaded anew or the edits go under another name', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  await openBoat(app, page, 'wreck/boat');
  const byHand = held('wreck').replace('"name": "Wreck"', '"name": "Wreck by hand"');
  writeFileSync(fileOf('wreck'), byHand);
  await page.locator('.known-lengths summary').click();
  await tape(page, '4.56');
  await stands(page, 'changed by something else');
  expect(await barriers(page)).toEqual([]);
  await keepPicture(page, 'conflict-laptop-day');
  expect(held('wreck')).toBe(byHand);
  page.once('dialog', (dialog) => void dialog.dismiss());
  await page.getByRole('link', { name: 'all boats' }).click();
  expect(page.url()).toContain('#/boat/wreck');
  await page.getByRole('button', { name: 'save it under another name' }).click();
  await page.waitForURL(/#\/boat\/wreck-\d$/);
  await page.getByRole('heading', { level: 1, name: 'Wreck', exact: true }).waitFor();
  expect(held('wreck')).toBe(byHand);
  expect(readFileSync(join(app.folder, 'wreck-2.boat.json'), 'utf8')).toContain('4.56');
  // the browser itself reports the refused save
  expect(app.complaints.filter((one) => !one.includes('412'))).toEqual([]);
  app.complaints.length = 0;
});

test('loaded anew, a file that was changed outside shows what it holds now', async () => {
  const page = await app.newPage({ window: 'phone', light: 'night' });
  await openBoat(app, page, 'bonxie/boat');
  writeFileSync(fileOf('bonxie'), held('bonxie').replace('"name": "Bonxie"', '"name": "Bonxie by hand"'));
  await tape(page, '4.56');
  await stands(page, 'changed by something else');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(windows.phone.width);
  await page.evaluate(() => window.scrollTo(0, 0));
  await keepPicture(page, 'conflict-phone-night');
  await page.getByRole('button', { name: 'load it anew' }).click();
  await page.getByRole('heading', { level: 1, name: 'Bonxie by hand' }).waitFor();
  await stands(page, exactly('saved'));
  app.complaints.length = 0;
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
  expect(readFileSync(await copy.path(), 'utf8')).toBe(own);
  await page.getByRole('button', { name: 'keep it in the folder' }).click();
  await stands(page, exactly('saved'));
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
