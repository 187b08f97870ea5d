import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, keepPicture, openAnother, type PageWish } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const opened = async (wish: PageWish): Promise<Page> => {
  const page = await openAnother(app, wish);
  await page.locator('.course a', { hasText: 'Needs' }).click();
  await page.getByRole('button', { name: 'table of needs' }).click();
  await page.locator('.needs-table').waitFor();
  return page;
};

const cell = (page: Page, id: string) => page.locator(`[data-cell="${id}"]`);

const said = (page: Page, words: string): Promise<unknown> =>
  page.waitForFunction((text) => document.querySelector('.edit-says')?.textContent?.includes(text) === true, words);

test('a newcomer fills a missing reading in the table, reads why it does not arrive, takes the cure and takes it back', async () => {
  const page = await opened({ window: 'laptop', light: 'day' });
  await page.getByRole('button', { name: /more readings/ }).click();
  await cell(page, 'humidity /mfd-helm').click();
  await said(page, 'Humidity must be seen.');
  const detail = page.locator('.needs-detail');
  await detail.getByText('does not arrive').first().waitFor();
  expect(await detail.textContent()).toContain('Nothing aboard sends humidity.');
  await keepPicture(page, 'needs-missing-laptop-day');
  await detail.locator('.cure-link').first().click();
  await said(page, 'finding');
  await page.waitForFunction(
    () => document.querySelector('[data-cell="humidity /mfd-helm"]')?.textContent?.includes('✓') === true,
  );
  await keepPicture(page, 'needs-cured-laptop-day');
  await page.locator('.edit-line').getByRole('button', { name: 'undo' }).click();
  await said(page, 'Taken back');
  await page.waitForFunction(
    () => document.querySelector('[data-cell="humidity /mfd-helm"]')?.textContent?.includes('×') === true,
  );
  expect(app.complaints).toEqual([]);
});

test('one stroke across cells fills them all as one step', async () => {
  const page = await opened({ window: 'laptop', light: 'day' });
  const [from, to] = [cell(page, 'radar-picture /instr-fly'), cell(page, 'radar-picture /instr-helm')];
  await from.scrollIntoViewIfNeeded();
  const [a, b] = [await from.boundingBox(), await to.boundingBox()];
  if (a === null || b === null) throw new Error('the cells are not to be seen');
  await page.mouse.move(a.x + a.width / 2, a.y + a.height / 2);
  await page.mouse.down();
  await page.mouse.move(b.x + b.width / 2, b.y + b.height / 2, { steps: 8 });
  await page.mouse.up();
  await said(page, 'Radar picture must be seen at 2 places.');
  await page.keyboard.press('Control+z');
  await said(page, 'Taken back');
  expect(app.complaints).toEqual([]);
});

test('the keyboard alone walks the table and fills it', async () => {
  const page = await opened({ window: 'laptop', light: 'night' });
  await cell(page, 'position /mfd-fly').focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('End');
  const at = await page.evaluate(() => document.activeElement?.getAttribute('data-cell'));
  expect(at).toMatch(/^course-speed-ground \/ais$/);
  await page.keyboard.press('w');
  await said(page, 'had better be seen');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('data-cell'))).toBe(at);
  await page.keyboard.press('Delete');
  await said(page, 'no longer wanted');
  await keepPicture(page, 'needs-laptop-night');
  expect(app.complaints).toEqual([]);
});
