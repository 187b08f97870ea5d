import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, keepPicture, openAnother, settled } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

/** A photo of a panel, 800 by 600 pixels, with a dark hole from 250 to 550 and from 200 to 400. */
const photoOfHole = async (page: Page): Promise<Buffer> => {
  const url = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    Object.assign(canvas, { width: 800, height: 600 });
    const context = canvas.getContext('2d');
    if (context === null) return '';
    context.fillStyle = '#c8cdc8';
    context.fillRect(0, 0, 800, 600);
    context.fillStyle = '#1e1e22';
    context.fillRect(250, 200, 300, 200);
    return canvas.toDataURL('image/png');
  });
  return Buffer.from(url.split(',')[1] ?? '', 'base64');
};

/** Presses on points of the photo, in its own pixels. */
const press = async (page: Page, points: readonly (readonly [number, number])[]): Promise<void> => {
  const box = await page.locator('.trace-photo').boundingBox();
  if (box === null) throw new Error('There is no photo.');
  for (const [x, y] of points) await page.mouse.click(box.x + (box.width * x) / 800, box.y + (box.height * y) / 600);
};

test('a hole is traced on a photo, held against the unit that comes there, and taken back in one step', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' }, 'sandpiper/fit');
  await page.getByRole('button', { name: 'measure an opening' }).click();
  const form = page.getByRole('region', { name: 'A new opening' });
  await form.getByLabel('What it is called').fill('hole of the old compass');
  await form.getByLabel('Thick, mm').fill('8');
  await form.getByRole('button', { name: 'trace it from a photo' }).click();
  await form
    .locator('input[type=file]')
    .setInputFiles({ name: 'hole.png', mimeType: 'image/png', buffer: await photoOfHole(page) });
  await page.locator('.trace-photo').waitFor();
  await form.getByRole('button', { name: 'fill the window' }).click();
  await press(page, [
    [100, 550],
    [500, 550],
    [250, 200],
    [550, 200],
    [550, 400],
    [250, 400],
  ]);
  await page.getByLabel('The two are apart, mm').fill('160');
  await page.getByText(/^Traced: (119\.\d|120|120\.\d) mm wide, (79\.\d|80|80\.\d) mm high\.$/).waitFor();
  await keepPicture(page, 'trace-a-hole');
  await page.getByRole('button', { name: 'use this outline' }).click();
  await form.getByRole('button', { name: 'done' }).click();
  await page.locator('.row', { hasText: 'hole of the old compass' }).waitFor();
  await settled(page);
  expect(await page.locator('.row', { hasText: 'hole of the old compass' }).textContent()).toContain('blind plate');
  await page
    .getByRole('button', { name: /^undo: / })
    .first()
    .click();
  await page.locator('.row', { hasText: 'hole of the old compass' }).waitFor({ state: 'detached' });
  expect(app.complaints).toEqual([]);
});
