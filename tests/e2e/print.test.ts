import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, openAnother } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

test('a print from a phone at night is drawn for paper lying on its side, in the inks of the day on white', async () => {
  const page = await openAnother(app, { window: 'phone', light: 'night' });
  const width = (): Promise<number> =>
    page.locator('.sheet-svg').evaluate((svg) => Number(svg.getAttribute('viewBox')?.split(' ')[2]));
  const onScreenMm = await width();
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  expect(onScreenMm).toBeLessThan(110);
  expect(await width()).toBeGreaterThanOrEqual(277);
  const look = await page.evaluate(() => {
    const style = getComputedStyle(document.documentElement);
    return [style.getPropertyValue('--paper'), style.getPropertyValue('--data'), style.colorScheme];
  });
  expect(look).toEqual(['#fff', '#1d4f7c', 'light']);
  expect(await page.locator('.sheet-tools').isVisible()).toBe(false);
  await page.emulateMedia({ media: 'screen' });
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await expect.poll(width).toBe(onScreenMm);
});

test('the order is printed with a box to tick by hand in place of its buttons', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' }, 'gannet/buy');
  const row = page.locator('.row', { has: page.locator('.order-choice') }).first();
  await row.waitFor();
  const tickBox = (): Promise<string> =>
    row.locator('.row-button').evaluate((button) => getComputedStyle(button, '::before').content);
  expect(await tickBox()).toBe('none');
  await page.emulateMedia({ media: 'print' });
  expect(await row.locator('.order-choice').isVisible()).toBe(false);
  expect(await tickBox()).toBe('""');
  expect(await row.isVisible()).toBe(true);
});

test('a table to type in is printed whole: its head on every page, no cell cut, nothing to press', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'dusk' }, 'gannet/kit');
  await page.locator('.table-switch').first().click();
  await page.locator('.grid-table tbody tr').nth(10).waitFor();
  await page.emulateMedia({ media: 'print' });
  const look = await page.evaluate(() => {
    const style = (selector: string) => getComputedStyle(document.querySelector(selector) ?? document.body);
    const cut = [...document.querySelectorAll('.grid-table td')].filter(
      (cell) => cell.getClientRects().length > 0 && cell.scrollWidth > cell.clientWidth + 1,
    );
    return {
      cut: cut.map((cell) => cell.textContent),
      over: style('.grid-scroll').overflowY,
      head: style('.grid-table thead').display,
      place: style('.grid-over').position,
    };
  });
  expect(look).toEqual({ cut: [], over: 'visible', head: 'table-header-group', place: 'static' });
  expect(await page.locator('.grid-table .new-row').isVisible()).toBe(false);
  await page.emulateMedia({ media: 'screen' });
});
