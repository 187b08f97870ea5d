import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, openAnother } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(async () => {
  await app.close();
});

test('the day’s energy stands at the step Power: the chart first, the figures of each day behind it', async () => {
  const page = await openAnother(app, { window: 'phone', light: 'night' }, 'gannet/power');
  const block = page.locator('.energy-block');
  await block.waitFor();
  expect(await block.locator('svg.energy-chart').getAttribute('aria-label')).toContain('before the refit and after it');
  const days = block.locator('.energy-day summary');
  expect(await days.allTextContents()).toContainEqual(
    expect.stringMatching(/^At anchor: \d+\sAh before, \d+\sAh after$/),
  );
  expect(await block.locator('.energy-table:visible').count()).toBe(0);
  await days.first().click();
  const rows = block.locator('.energy-table:visible tbody tr');
  expect(await rows.count()).toBeGreaterThan(3);
  expect(await rows.first().locator('td').nth(1).textContent()).toMatch(/^\d+\.\d/);
  // nothing of it is wider than the phone
  const widths = await block.evaluate((element) => [element.scrollWidth, element.clientWidth]);
  expect(widths[0]).toBeLessThanOrEqual(widths[1] ?? 0);
  expect(app.complaints).toEqual([]);
});

test('a day is made one’s own, its hours are changed, and both are taken back', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' }, 'gannet/power');
  const days = page.locator('.energy-day');
  await days.first().waitFor();
  const before = await days.count();
  await days.first().locator('summary').click();
  await days.first().getByRole('button', { name: 'make it a day of your own' }).click();
  const own = days.filter({ hasText: 'At anchor, as we do it' });
  await own.waitFor();
  expect(await days.count()).toBe(before + 1);
  await own.locator('summary').click();
  const said = (await own.locator('summary').textContent()) ?? '';
  const hours = own.getByLabel('Hours a day of AIS class B', { exact: false });
  await hours.fill('2');
  await hours.press('Enter');
  await own.locator('summary', { hasNotText: said }).waitFor();
  await page.getByRole('button', { name: /^undo: / }).click();
  await own.locator('summary', { hasText: said }).waitFor();
  await page.getByRole('button', { name: /^undo: / }).click();
  await own.waitFor({ state: 'detached' });
  expect(app.complaints).toEqual([]);
});
