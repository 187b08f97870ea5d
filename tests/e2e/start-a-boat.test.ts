import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, barriers, keepPicture, windows } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest({ demos: false });
});
afterAll(() => app.close());

const heldBy = (id: string) => JSON.parse(readFileSync(join(app.folder, `${id}.boat.json`), 'utf8'));

test('from an empty folder to a boat by the keyboard alone: a hull, a name and a length', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  await page.goto(app.address);
  await page.getByText('There is no boat in this folder yet.').waitFor();
  const first = page.getByRole('radio').first();
  await first.focus();
  await page.keyboard.press('Space');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  expect(await page.getByRole('radio', { name: 'ketch' }).isChecked()).toBe(true);
  await page.keyboard.press('Tab');
  await page.keyboard.type('Kittiwake');
  await page.keyboard.press('Tab');
  await page.keyboard.type('39 ft');
  await page.getByText('11.89 m (39 ft)').waitFor();
  await page.getByText('3.65 m (12 ft), suggested').waitFor();
  await page.getByRole('img', { name: /^Kittiwake from the side and from above/ }).waitFor();
  expect(await barriers(page)).toEqual([]);
  await keepPicture(page, 'new-boat-laptop-day');
  await page.keyboard.press('Enter');
  await page.waitForURL(/#\/boat\/kittiwake\/boat$/);
  await page.getByRole('heading', { level: 1, name: 'Kittiwake' }).waitFor();
  await page
    .locator('.save-line p')
    .filter({ hasText: /^saved in/ })
    .waitFor();
  expect(readdirSync(app.folder)).toEqual(['kittiwake.boat.json']);
  expect(heldBy('kittiwake').hull).toMatchObject({ kind: 'ketch', lengthM: 11.89, beamM: 3.65 });
  // hints are called back from the list of all that can be done, given one at a time, and gone once they are followed
  const hint = page.getByRole('region', { name: 'Hint' });
  expect(await hint.count()).toBe(0);
  await page.keyboard.press('/');
  await page.keyboard.type('show the hints again');
  await page.keyboard.press('Enter');
  await hint.getByText('This line always says the next sensible thing').waitFor();
  expect(await barriers(page)).toEqual([]);
  await keepPicture(page, 'hint-laptop-day');
  await page.locator('.next-go').press('Enter');
  await hint.getByText('Say it in your own words').waitFor();
  await page.waitForFunction(() => document.activeElement?.closest('.kit-search') !== null);
  await hint.getByRole('button', { name: 'put this hint away' }).press('Escape');
  await hint.getByText('Drag the sheet to move it').waitFor();
  await hint.getByRole('button', { name: 'no more hints' }).press('Enter');
  await hint.waitFor({ state: 'detached' });
  expect(app.complaints).toEqual([]);
});

test('beside a boat that is there another is made on a phone, and a length that is none is told at its field', async () => {
  const page = await app.newPage({ window: 'phone', light: 'night' });
  await page.goto(app.address);
  await page.getByText('kittiwake.boat.json').waitFor();
  await page.locator('.hull').getByText('rigid inflatable', { exact: true }).tap();
  await page.getByLabel('Beam').fill('wide');
  await page.getByText('Write a length, for example').waitFor();
  await page.getByRole('button', { name: 'Make this boat' }).tap();
  expect(await page.getByLabel('Beam').evaluate((field) => field === document.activeElement)).toBe(true);
  expect(await barriers(page)).toEqual([]);
  await page.getByLabel('Beam').fill('2.5 m');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(windows.phone.width);
  await keepPicture(page, 'new-boat-phone-night');
  await page.getByRole('button', { name: 'Make this boat' }).tap();
  await page.waitForURL(/#\/boat\/new-boat\/boat$/);
  expect(heldBy('new-boat').hull).toMatchObject({ kind: 'rigid-inflatable', lengthM: 7, beamM: 2.5 });
  expect(app.complaints).toEqual([]);
});
