import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { inventedDevices, recordBus } from '../recordings/invented-bus.ts';
import { candumpBytes } from '../recordings/write-recording.ts';
import { type AppUnderTest, appUnderTest, barriers, keepPicture, windows } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest({ demos: false });
});
afterAll(() => app.close());

const held = () => JSON.parse(readFileSync(join(app.folder, 'new-boat.boat.json'), 'utf8'));

test('walked round with a phone, what is found out of battery and ways goes into the boat, and the form is saved to print', async () => {
  const page = await app.newPage({ window: 'phone', light: 'day' });
  await page.goto(app.address);
  await page.getByRole('radio', { name: 'sloop, mast on deck' }).check();
  await page.getByRole('button', { name: 'Make this boat' }).tap();
  await page.getByRole('heading', { name: 'Walk-round' }).waitFor();
  await page.locator('.walk-stop summary').filter({ hasText: 'batteries under the quarter berth' }).tap();
  await page.getByText('Disconnect the negative first').waitFor();
  const stopOf = (place: string) =>
    page.locator('.walk-stop').filter({ has: page.locator('summary', { hasText: place }) });
  const stop = stopOf('batteries under the quarter berth');
  await stop
    .getByRole('group', { name: /What keeps the house from drawing on it/ })
    .getByText('relay')
    .tap();
  await expect.poll(() => held().supply.banks[1].partedBy).toBe('relay');
  const fuse = stop.getByRole('textbox', { name: /^bank house: Main fuse/ });
  await fuse.fill('100');
  await fuse.press('Enter');
  await expect.poll(() => held().supply.banks[0].main).toEqual({ kind: 'fuse', ratingA: 100 });
  await keepPicture(page, 'walk-round-phone-day');
  await stopOf('anchor locker').locator('summary').tap();
  const tape = stopOf('anchor locker').getByRole('textbox', { name: /^Taped length from/ });
  await tape.fill('5 ft 2');
  await tape.press('Enter');
  await expect
    .poll(() => held().ways.some((way: { length: { valueM: number } }) => way.length.valueM === 1.575))
    .toBe(true);
  expect(await barriers(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(windows.phone.width);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'save the form to print' }).tap();
  const form = await download;
  expect(form.suggestedFilename()).toBe('walk-round-new-boat.html');
  expect(await text(await form.createReadStream())).toContain('Walk-round, New boat');
  expect(app.complaints).toEqual([]);
});

/** A white point: the smallest picture there is. */
const point = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mP8/x8AAwMCAO+ip1sAAAAASUVORK5CYII=',
  'base64',
);

test('a photo of a unit’s label is kept beside the boat, shown where it was taken, and taken away again', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  await page.goto(app.address);
  const recording = Buffer.from(candumpBytes(recordBus({ devices: inventedDevices, seconds: 20 })));
  const log = { name: 'bus.log', mimeType: 'text/plain', buffer: recording };
  await page.locator('.top-bar input[type=file]').setInputFiles(log);
  await page.getByRole('radio', { name: 'sloop, mast on deck' }).check();
  await page.getByLabel('Name').fill('Pictured');
  await page.getByRole('button', { name: /^Make this boat with/ }).click();
  await page.waitForURL(/#\/boat\/pictured\/boat$/);
  const stop = page
    .locator('.walk-stop')
    .filter({ has: page.getByText('display, unit 1').first() })
    .first();
  await stop.locator('summary').click();
  const photos = stop.getByRole('group', { name: 'photos of display, unit 1' });
  const choosing = page.waitForEvent('filechooser');
  await photos.getByRole('button', { name: 'label' }).click();
  await (await choosing).setFiles({ name: 'label.png', mimeType: 'image/png', buffer: point });
  await stop.getByRole('img', { name: 'display, unit 1: label' }).waitFor();
  const file = () => JSON.parse(readFileSync(join(app.folder, 'pictured.boat.json'), 'utf8'));
  await expect.poll(() => file().photos?.[0]).toMatchObject({ of: 'display-1', shows: 'label' });
  const { hash } = file().photos[0].picture;
  expect(readdirSync(join(app.folder, 'pictured.files')).some((name) => name.startsWith(hash))).toBe(true);
  expect(await barriers(page)).toEqual([]);
  await keepPicture(page, 'walk-round-photo-laptop-day');
  await stop.getByRole('button', { name: 'take the photo away: display, unit 1: label' }).click();
  await expect.poll(() => file().photos).toBeUndefined();
  expect(app.complaints).toEqual([]);
});
