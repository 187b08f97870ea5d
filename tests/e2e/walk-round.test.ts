import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
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
  expect(readFileSync(await form.path(), 'utf8')).toContain('Walk-round, New boat');
  expect(app.complaints).toEqual([]);
});
