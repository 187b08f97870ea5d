import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, barriers, contrasts, keepPicture, openAnother } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const openPower = async (window: 'laptop' | 'phone', light: 'day' | 'night'): Promise<Page> => {
  const page = await openAnother(app, { window, light }, 'gannet/power');
  await page.locator('.cautions').first().waitFor();
  return page;
};

const showOneLine = async (page: Page): Promise<void> => {
  await page.getByRole('group', { name: 'What the sheet shows' }).getByText('one line').click();
  await page.locator('.sheet-svg[aria-label^="Power of Gannet on one line"]').waitFor();
};

test.each([
  ['laptop', 'day'],
  ['laptop', 'night'],
  ['phone', 'day'],
  ['phone', 'night'],
] as const)('on a %s by %s the power step draws the boat on one line, without barriers', async (window, light) => {
  const page = await openPower(window, light);
  expect(await page.locator('.sheet-svg').textContent()).toMatch(/radar 24 in, 11\.\d\d V|8 ?radar 24 in, 11\.\d\d V/);
  await showOneLine(page);
  const drawing = await page.locator('.sheet-svg').textContent();
  for (const words of ['bank house', '100 A main fuse', 'panel helm-fuses', '5 A breaker m4', 'draws 2.52 A']) {
    expect(drawing).toContain(words);
  }
  expect(await (light === 'day' ? barriers : contrasts)(page)).toEqual([]);
  await keepPicture(page, `power-${window}-${light}`);
  // nothing of the page lies beside or under its window on a laptop
  if (window === 'laptop') {
    const overMm = await page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
    expect(overMm).toBeLessThanOrEqual(0);
  }
  expect(app.complaints).toEqual([]);
});

test('a row of the power drawing lights with the feed in the margin, and opens the card with wire and volts', async () => {
  const page = await openPower('laptop', 'day');
  await showOneLine(page);
  const row = page.locator('.sheet-svg .balloon[aria-label^="24-inch solid-state dome radar"]');
  await row.focus();
  const feed = page
    .locator('.row', { hasText: '24-inch solid-state dome radar' })
    .filter({ hasText: 'from panel main' });
  expect(await feed.first().getAttribute('class')).toContain('lit');
  await row.press('Enter');
  const card = page.locator('.margin .card-head').first();
  await card.waitFor();
  expect(await page.locator('.margin').textContent()).toMatch(/Its feed is 4\s?mm², /);
});

test('why a feed has its size is opened in the margin and in the table, in the units chosen', async () => {
  const page = await openPower('laptop', 'day');
  const why = page.locator('.why').nth(1);
  await why.locator('summary').click();
  expect(await why.textContent()).toMatch(
    /It may lose 0\.36\s?V.*So it is .*\smm².*by the published rule.*in the cable itself/,
  );
  await page.getByRole('button', { name: 'tables', exact: true }).click();
  const table = page.getByRole('region', { name: 'Feeds, fuses and loads' });
  await table.getByRole('button', { name: '24-inch solid-state dome radar' }).click();
  expect(await table.locator('.why-row:not([hidden])').textContent()).toContain('That asks for 4');
  await page.getByRole('group', { name: 'Units of length' }).getByText('feet').click();
  expect(await table.locator('.why-row:not([hidden])').textContent()).toMatch(/over 30\s?ft 3\s?in and back/);
  const panel = table.getByRole('table', { name: /^Fuses and breakers, panel main/ });
  expect(await panel.getByRole('row', { name: /^m4 / }).textContent()).toMatch(
    /5\s?Abreaker24-inch solid-state dome radar/,
  );
  await table.getByRole('button', { name: 'close' }).click();
  expect(await table.count()).toBe(0);
  expect(await page.evaluate(() => document.activeElement?.className)).toContain('table-switch');
});

test('cautions stand right under the work they belong to: at the banks, and at the feeds', async () => {
  const page = await openPower('laptop', 'day');
  const [atBanks, atFeeds] = [page.locator('.cautions').nth(0), page.locator('.cautions').nth(1)];
  expect(await atBanks.textContent()).toMatch(/Disconnect the negative first.*thousands of amperes/);
  expect(await atFeeds.textContent()).toMatch(/ignition protected.*licensed electrician.*not an approval/);
  const before = (heading: string, caution: typeof atBanks): Promise<boolean> =>
    caution.evaluate((list, words) => {
      const block = list.previousElementSibling;
      return block?.querySelector('h2')?.textContent === words;
    }, heading);
  expect(await before('Banks and converters', atBanks)).toBe(true);
  expect(await before('Feeds', atFeeds)).toBe(true);
});

test('a print of the power step has the drawing in pages and every table in full, for paper', async () => {
  const page = await openPower('phone', 'night');
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  const pages = page.locator('.power-page');
  expect(await pages.count()).toBeGreaterThanOrEqual(2);
  expect(await pages.first().getAttribute('viewBox')).toBe('0 0 277 174');
  expect(await pages.first().isVisible()).toBe(true);
  expect(await page.locator('.power-pages .why-row').first().isVisible()).toBe(true);
  expect(await page.locator('.power-pages .caution').first().isVisible()).toBe(true);
  expect(await page.locator('.margin .folded').first().isVisible()).toBe(false);
  await page.emulateMedia({ media: 'screen' });
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await expect.poll(() => pages.count()).toBe(0);
});
