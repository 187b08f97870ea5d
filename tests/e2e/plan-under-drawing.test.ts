import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import {
  type AppUnderTest,
  appUnderTest,
  barriers,
  boatOn,
  keepPicture,
  openAnother,
  type PageWish,
} from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const openAtBoat = async (light: PageWish['light'] = 'day'): Promise<Page> => {
  const page = await openAnother(app, { window: 'laptop', light }, 'sandpiper/boat');
  await page.locator('.place-mark').first().waitFor();
  await page.locator('.underlays summary').click();
  return page;
};

/** A picture of a frame and a waterline, larger than what is kept. */
const aPlan = async (page: Page): Promise<Buffer> => {
  const address = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    canvas.width = 3000;
    canvas.height = 1400;
    const pen = canvas.getContext('2d');
    if (pen === null) return '';
    pen.fillStyle = 'white';
    pen.fillRect(0, 0, 3000, 1400);
    pen.lineWidth = 8;
    pen.strokeRect(100, 400, 2800, 500);
    return canvas.toDataURL('image/png');
  });
  return Buffer.from(address.split(',')[1] ?? '', 'base64');
};

const choose = async (page: Page, file: { name: string; mimeType: string; buffer: Buffer }): Promise<void> =>
  page.locator('.underlays input[type="file"]').first().setInputFiles(file);

const said = (page: Page, start: string): Promise<unknown> =>
  page.waitForFunction((words) => document.querySelector('.edit-says')?.textContent?.startsWith(words) === true, start);

const image = '.underlay-image';
const widthOf = async (page: Page): Promise<number> => (await page.locator(image).boundingBox())?.width ?? 0;

test('a plan is put under the drawing, kept beside the boat, and set to scale by a distance that was typed', async () => {
  const page = await openAtBoat();
  await choose(page, { name: 'plan.png', mimeType: 'image/png', buffer: await aPlan(page) });
  await said(page, 'Put a picture under the boat from the side.');
  await page.locator(image).waitFor({ state: 'attached' });
  expect(await page.locator(image).getAttribute('width')).toBe('2000');
  const files = readdirSync(join(app.folder, `${boatOn(page)}.files`));
  expect(files).toEqual([expect.stringMatching(/^[0-9a-f]{64}\.png$/)]);
  // as long as the boat at first, 9.4 m; half of that once the marks are half as far apart
  const wasPx = await widthOf(page);
  const apart = page.locator('input[name="apart"]').first();
  expect(await apart.inputValue()).toBe('9.40 m');
  await apart.fill('4.7 m');
  await apart.press('Enter');
  await said(page, 'Fit the picture from the side.');
  expect(await widthOf(page)).toBeCloseTo(wasPx / 2, 0);
  await keepPicture(page, 'plan-under-drawing-laptop-day');
  expect(await barriers(page)).toEqual([]);
  await page.getByRole('button', { name: 'hide the picture from the side' }).click();
  await said(page, 'Hide the picture from the side.');
  expect(await page.locator(image).count()).toBe(0);
  await page.locator('.edit-line').getByRole('button', { name: 'undo' }).click();
  await page.locator(image).waitFor({ state: 'attached' });
  expect(app.complaints).toEqual([]);
});

test('a file that is no picture is refused in a sentence, and a picture that went is a doubt', async () => {
  const page = await openAtBoat('night');
  await choose(page, { name: 'plan.txt', mimeType: 'text/plain', buffer: Buffer.from('no picture') });
  await page.getByText('This is no picture that can be used.').waitFor();
  await choose(page, { name: 'plan.png', mimeType: 'image/png', buffer: await aPlan(page) });
  await page.locator(image).waitFor({ state: 'attached' });
  await page.getByText(/^saved in/).waitFor();
  await keepPicture(page, 'plan-under-drawing-laptop-night');
  rmSync(join(app.folder, `${boatOn(page)}.files`), { recursive: true });
  await page.reload();
  await page.getByText('The picture under the boat from the side is not found beside the boat file').waitFor();
  expect(existsSync(join(app.folder, `${boatOn(page)}.files`))).toBe(false);
  // what the browser itself says of an address that holds nothing is expected here
  expect(app.complaints.filter((one) => !one.includes('404'))).toEqual([]);
});
