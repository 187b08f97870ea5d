import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, openAnother } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const markedAs = (page: Page, mark: string): Promise<number> => page.locator(`.sheet-svg [data-out="${mark}"]`).count();

test('a unit pulled out by a press goes dark with its cables, and the margin says what goes off which screen', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' });
  await page.getByRole('button', { name: 'pull out and see' }).click();
  await page.locator('.balloon[data-about~="switch"]').first().click();
  const card = page.locator('.pull-card');
  await card.getByRole('heading', { name: /^Out: / }).waitFor();
  expect(await markedAs(page, 'out')).toBeGreaterThan(0);
  expect(await markedAs(page, 'still')).toBeGreaterThan(0);
  expect(await card.textContent()).toContain('radar picture');
  await page.keyboard.press('Escape');
  expect(await markedAs(page, 'out')).toBe(0);
  expect(await card.count()).toBe(0);
  expect(app.complaints).toEqual([]);
});

test('the keyboard alone pulls out the worst failure from the margin, and Escape puts it back', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'night' }, 'gannet/power');
  const row = page.locator('.blackout-block .row-button').first();
  await row.focus();
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Out: Bank house' }).waitFor();
  expect(await markedAs(page, 'dark')).toBeGreaterThan(10);
  expect(await page.locator('.pull-card').textContent()).toContain('Single point: depth');
  await page.keyboard.press('Escape');
  expect(await markedAs(page, 'dark')).toBe(0);
  expect(app.complaints).toEqual([]);
});

test('a finger pulls out on the phone, and the card and the dark stay on paper', async () => {
  const page = await openAnother(app, { window: 'phone', light: 'day' });
  await page.getByRole('button', { name: 'pull out and see' }).tap();
  await page.locator('.balloon[data-about~="mfd-helm"]').first().tap();
  await page
    .locator('.pull-card')
    .getByRole('heading', { name: /^Out: / })
    .waitFor();
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.pull-card').isVisible()).toBe(true);
  const dash = await page
    .locator('.sheet-svg [data-out="out"] [stroke]')
    .first()
    .evaluate((element) => getComputedStyle(element).strokeDasharray);
  expect(dash).not.toBe('none');
  expect(app.complaints).toEqual([]);
});
