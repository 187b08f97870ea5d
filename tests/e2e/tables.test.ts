import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, keepPicture, openAnother } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const opened = async (step: string, table: string, light: 'day' | 'night' = 'day'): Promise<Page> => {
  const page = await openAnother(app, { window: 'laptop', light }, `gannet/${step}`);
  await page.getByRole('button', { name: table }).click();
  await page.locator('.grid-table').waitFor();
  return page;
};

/** Waits for the line of the last step; a figure stands on one line with its unit there. */
const said = (page: Page, words: string): Promise<unknown> =>
  page.waitForFunction(
    (part) => document.querySelector('.edit-says')?.textContent?.replaceAll('\u00a0', ' ').includes(part) === true,
    words,
  );

/** Pastes as a spreadsheet would. */
const paste = (page: Page, text: string): Promise<void> =>
  page.evaluate((given) => {
    const data = new DataTransfer();
    data.setData('text/plain', given);
    document.activeElement?.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true }));
  }, text);

test('ways are found, sorted and taped from the keyboard alone', async () => {
  const page = await opened('boat', 'places and ways');
  await page.locator('.grid-head').getByText('ways').click();
  await page.getByRole('button', { name: 'sort by length' }).click();
  await page.getByRole('searchbox').fill('guessed');
  const row = page.locator('.grid-table tbody tr').first();
  await page.locator('.grid-table [tabindex="0"]').focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.type('12 ft 6');
  await keepPicture(page, 'table-of-ways-laptop-day');
  await page.keyboard.press('Enter');
  await said(page, '3.81 m, taped');
  // taped now, so it is no longer among those found
  expect(await row.textContent()).not.toContain('3.81');
  await page.keyboard.press('ControlOrMeta+z');
  await said(page, 'Taken back');
  expect(app.complaints).toEqual([]);
});

test('rows from a spreadsheet are places and units, as one step; what is not understood keeps all out', async () => {
  const page = await opened('kit', 'table of kit', 'night');
  const rows = page.locator('.grid-table tbody tr');
  const before = await rows.count();
  await page.locator('.grid-table [tabindex="0"]').focus();
  await paste(page, 'unit\twhat it is\tplace\nSpare radio\tvhf radio\tthe moon\n');
  expect(await page.locator('.grid-wrong').textContent()).toMatch(/Nothing was put in\..*the moon/s);
  await paste(page, 'unit\twhat it is\nSpare radio\tvhf radio\nHorn\thailer\n');
  await said(page, 'Add 2 rows to kit');
  expect(await rows.count()).toBe(before + 2);
  await keepPicture(page, 'table-of-kit-laptop-night');
  await page.keyboard.press('ControlOrMeta+z');
  await said(page, 'Taken back');
  expect(await rows.count()).toBe(before);
  expect(app.complaints).toEqual([]);
});

test('a circuit is typed in a new row and fed with two things aboard', async () => {
  const page = await opened('power', 'supply');
  const cells = page.locator('.new-row [role="gridcell"]');
  for (const [at, text] of ['Spare', 'main', '5 A', 'fuse'].entries()) {
    await cells.nth(at).dblclick();
    await page.keyboard.type(text);
    await page.keyboard.press('Tab');
  }
  await page.locator('.new-row').getByRole('button', { name: 'put in' }).click();
  await said(page, 'A circuit of 5 A more in panel main');
  await page.locator('.grid-table').getByText('Spare', { exact: true }).waitFor();
  expect(app.complaints).toEqual([]);
});
