import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { inventedDevices, recordBus } from '../recordings/invented-bus.ts';
import { candumpBytes } from '../recordings/write-recording.ts';
import { type AppUnderTest, appUnderTest, barriers, keepPicture, windows } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest({ demos: false });
});
afterAll(() => app.close());

const recording = {
  name: 'bus.log',
  mimeType: 'text/plain',
  buffer: Buffer.from(candumpBytes(recordBus({ devices: inventedDevices, seconds: 20 }))),
};
const kitOf = (id: string) => JSON.parse(readFileSync(join(app.folder, `${id}.boat.json`), 'utf8')).kit;
const pick = (page: Page): Promise<void> => page.locator('.top-bar input[type=file]').setInputFiles(recording);

/** Drops a text on the page, as from a file manager. */
const drop = (page: Page, text: string): Promise<void> =>
  page.evaluate((dropped) => {
    const data = new DataTransfer();
    data.items.add(new File([dropped], 'letter.txt', { type: 'text/plain' }));
    window.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
  }, text);

test('a recording dropped on an empty folder is told, and becomes a boat on the hull chosen', async () => {
  const page = await app.newPage({ window: 'phone', light: 'day' });
  await page.goto(app.address);
  await drop(page, 'Dear yard, the mast comes down on Monday.');
  await page.getByText('There is not one message of a bus in this file.').waitFor();
  await page.getByRole('button', { name: 'put it away' }).click();
  await page.getByText('There is no boat in this folder yet.').waitFor();
  await pick(page);
  await page.getByText('9 units heard').waitFor();
  await page.getByText('wind sensor', { exact: false }).first().waitFor();
  await page.getByRole('radio', { name: 'sloop, mast on deck' }).check();
  await page.getByLabel('Name').fill('Kittiwake');
  expect(await barriers(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(windows.phone.width);
  await keepPicture(page, 'recording-phone-day');
  await page.getByRole('button', { name: 'Make this boat with the 9 units heard' }).click();
  await page.waitForURL(/#\/boat\/kittiwake\/boat$/);
  await page.getByRole('heading', { level: 1, name: 'Kittiwake' }).waitFor();
  expect(kitOf('kittiwake').length).toBe(9);
  expect(await page.getByText('A recording of the bus').count()).toBe(0);
  expect(app.complaints).toEqual([]);
});

test('dropped on a boat that is open, it is put aboard as one step that can be undone', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  await page.goto(app.address);
  await page.getByRole('radio', { name: 'trawler' }).check();
  await page.getByRole('button', { name: 'Make this boat' }).click();
  await page.waitForURL(/#\/boat\/new-boat\/boat$/);
  await page.getByRole('heading', { level: 1, name: 'New boat' }).waitFor();
  await pick(page);
  await page.getByRole('button', { name: 'Put 9 units aboard New boat' }).waitFor();
  await keepPicture(page, 'recording-laptop-day');
  await page.getByRole('button', { name: 'Put 9 units aboard New boat' }).click();
  await page.getByText('Put aboard what was heard: 9 units.').first().waitFor();
  await expect.poll(() => kitOf('new-boat').length).toBe(9);
  await page.locator('.sheet-frame').focus();
  await page.keyboard.press('Control+z');
  await expect.poll(() => kitOf('new-boat').length).toBe(0);
  expect(app.complaints).toEqual([]);
});
