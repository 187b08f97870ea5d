import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, barriers, openAnother, windows } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

test('another source is chosen from the keyboard as one step, the plan holds to it, and undo takes it back', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' }, 'gannet/needs');
  const choice = page.getByLabel('depth comes from');
  await choice.waitFor();
  expect(await choice.inputValue()).toBe('');
  await choice.focus();
  await page.keyboard.press('b');
  await page.getByText('Take depth from bronze through-hull').first().waitFor();
  await expect.poll(() => choice.inputValue()).toBe('transducer.echo');
  const row = page.locator('.row', { has: choice });
  await expect.poll(() => row.locator('.row-fact').first().textContent()).toContain('chosen by you');
  expect(await choice.evaluate((select) => select === document.activeElement)).toBe(true);
  await page.getByRole('button', { name: 'undo', exact: true }).click();
  await expect.poll(() => choice.inputValue()).toBe('');
  expect(app.complaints).toEqual([]);
});

test.each(['laptop', 'phone'] as const)(
  'settings and pairs stand over the sheet on a %s, without a barrier that axe knows and nothing past the edge',
  async (window) => {
    const page = await openAnother(app, { window, light: 'night' }, 'gannet/lines');
    await page.getByRole('button', { name: 'settings and pairs' }).click();
    const pair = page.locator('.setting-table', { hasText: 'small converter (data) to old fixed VHF' });
    await pair.waitFor();
    expect(await pair.locator('tbody tr').allTextContents()).toEqual([
      'A: out AA: in A',
      'B: out BB: in B',
      'old fixed VHF with DSC: out Aleft open, insulated',
      'old fixed VHF with DSC: out Bleft open, insulated',
    ]);
    const wide = await page
      .locator('.setting-table')
      .evaluateAll(
        (tables) => tables.filter((table) => table.scrollWidth > (table.parentElement?.clientWidth ?? 0)).length,
      );
    expect(wide).toBe(0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(windows[window].width);
    expect(await barriers(page)).toEqual([]);
    expect(app.complaints).toEqual([]);
  },
);

test('the print of the step Lines has a box to tick before every setting and every wire', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' }, 'gannet/lines');
  await page.getByRole('button', { name: 'settings and pairs' }).waitFor();
  await page.emulateMedia({ media: 'print' });
  const pages = page.locator('.power-pages .setting-table');
  // the tables come after the first picture
  await expect
    .poll(async () => {
      await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
      return pages.count();
    })
    .toBeGreaterThan(10);
  const rows = await pages.locator('tbody tr').count();
  expect(await pages.locator('.tick-box').count()).toBe(rows);
});
