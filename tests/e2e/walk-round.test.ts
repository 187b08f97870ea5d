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
  const fuse = stop.getByRole('form', { name: /^bank house: Main fuse/ });
  await fuse.getByRole('textbox', { name: 'amperes' }).fill('100');
  await fuse.getByRole('textbox', { name: 'along the wire' }).fill('7 in');
  // what is typed and not put in is still there when the page went and came back
  await page.reload();
  await stop.locator('summary').first().tap();
  await fuse.getByRole('button', { name: /^put in/ }).tap();
  await expect
    .poll(() => held().supply.banks[0].main)
    .toEqual({ kind: 'fuse', ratingA: 100, distance: { valueM: 0.178, how: 'taped' } });
  const plate = stop.getByRole('form', { name: /^bank house: From its label/ });
  await plate.getByRole('textbox', { name: 'cold cranking, A' }).fill('720');
  await plate.getByRole('textbox', { name: 'cold cranking, A' }).press('Enter');
  await expect.poll(() => held().supply.banks[0]).toMatchObject({ coldCrankingA: 720, seen: true });
  await stop.getByRole('button', { name: /^it is so: this place/ }).tap();
  const isSeen = () => held().places.find(({ id }: { id: string }) => id === 'battery-box')?.seen;
  await expect.poll(isSeen).toBe(true);
  await page
    .getByRole('status')
    .filter({ hasText: /^\d+ of \d+ answered$/ })
    .waitFor();
  await keepPicture(page, 'walk-round-phone-day');
  await page.getByRole('button', { name: 'next open question' }).tap();
  expect(await page.evaluate(() => document.activeElement?.closest('[data-question]') !== null)).toBe(true);
  await stopOf('anchor locker').locator('summary').first().tap();
  const tape = stopOf('anchor locker').getByRole('textbox', { name: /^Taped length from/ });
  await tape.fill('5 ft 2');
  await tape.press('Enter');
  await expect
    .poll(() => held().ways.some((way: { length: { valueM: number } }) => way.length.valueM === 1.575))
    .toBe(true);
  const inWay = stopOf('anchor locker')
    .getByRole('form', { name: /What is in it/ })
    .first();
  await inWay.getByRole('textbox', { name: 'how many' }).fill('2');
  await inWay.getByRole('textbox', { name: 'how thick' }).fill('1/4 in');
  await inWay.getByRole('button', { name: /^these are in it/ }).tap();
  await expect
    .poll(() => held().cables.map(({ diameterMm }: { diameterMm: number }) => diameterMm))
    .toEqual([6.35, 6.35]);
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
  await stop.locator('summary').first().click();
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
  const unit = () => file().kit.find(({ id }: { id: string }) => id === 'display-1');
  const serial = stop.getByRole('form', { name: /^display, unit 1: Serial number/ });
  await serial.getByRole('textbox', { name: 'serial number' }).fill('A-77310');
  await serial.getByRole('textbox', { name: 'serial number' }).press('Enter');
  await expect.poll(() => unit().aboard?.serial).toBe('A-77310');
  const settings = stop.getByRole('form', { name: /^display, unit 1: Copy before/ });
  await settings.getByRole('textbox', { name: 'depth offset' }).fill('-1.2 m');
  await settings.getByRole('textbox', { name: 'depth offset' }).press('Enter');
  await expect.poll(() => unit().aboard?.settings).toEqual([{ name: 'depth offset', value: '-1.2 m' }]);
  await stop
    .getByRole('group', { name: /^display, unit 1: Its plugs/ })
    .getByText('all as in the file')
    .click();
  await expect.poll(() => unit().changes?.some(({ how }: { how: string }) => how === 'seen')).toBe(true);
  await stop.locator('.walk-answered summary').click();
  await stop.getByText('•••••10').waitFor();
  await keepPicture(page, 'walk-round-photo-laptop-day');
  await stop.getByRole('button', { name: 'take the photo away: display, unit 1: label' }).click();
  await expect.poll(() => file().photos).toBeUndefined();
  expect(app.complaints).toEqual([]);
});
