import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, keepPicture, openAnother } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const opened = async (light: 'day' | 'night'): Promise<Page> => {
  const page = await openAnother(app, { window: 'laptop', light }, 'gannet/buy');
  await page.locator('.quote-block').waitFor();
  return page;
};

test('the quote changes with the price of an hour, which is priced as a change, and with the hours of a task; both are taken back', async () => {
  const page = await opened('night');
  const total = page.locator('.quote-range');
  const before = (await total.textContent()) ?? '';
  expect(before).toMatch(/^\d+\.\d\d to \d+\.\d\d EUR$/);
  const rate = page.getByLabel('An hour of work');
  await rate.fill('90');
  await rate.press('Enter');
  await expect.poll(() => total.textContent()).not.toBe(before);
  const dearer = (await total.textContent()) ?? '';
  expect(Number.parseFloat(dearer)).toBeGreaterThan(Number.parseFloat(before));
  // the state before it is kept in the folder once this one is saved
  await page.getByText(/^saved in/).waitFor();
  const beside = page.locator('.quote-beside');
  await beside.getByRole('button', { name: 'price what changed' }).click();
  await beside.locator('select').selectOption({ index: 1 });
  await beside.getByText(/The change comes to \+/).waitFor();
  expect(await beside.locator('.quote-total').textContent()).toMatch(/\+\d+\.\d\d/);
  await beside.getByRole('button', { name: 'put it away' }).click();
  await page.locator('.quote-fold summary', { hasText: 'Work, by task' }).click();
  const survey = page.getByLabel('Hours of one: Survey and sketch of what is aboard');
  await survey.fill('1');
  await survey.press('Enter');
  await expect.poll(() => total.textContent()).not.toBe(dearer);
  await keepPicture(page, 'quote-laptop-night');
  for (const _ of [1, 2]) await page.getByRole('button', { name: /^undo: / }).click();
  await expect.poll(() => total.textContent()).toBe(before);
  expect(app.complaints).toEqual([]);
});

test('days to come and a supplier are typed into the table of the order, and the work is told to wait', async () => {
  const page = await opened('day');
  await page.getByRole('button', { name: 'the order' }).click();
  await page.locator('.grid-table').waitFor();
  const cells = page.locator('.grid-table tbody tr').first().locator('[role="gridcell"]');
  const item = (await cells.first().textContent()) ?? '';
  for (const [at, text] of [
    [4, 'Harbour Supplies'],
    [5, '42'],
  ] as const) {
    await cells.nth(at).dblclick();
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
    await expect.poll(() => cells.nth(at).textContent()).toContain(text);
  }
  await keepPicture(page, 'order-table-laptop-day');
  const held = page.locator('.quote-held');
  await expect.poll(() => held.textContent()).toMatch(/42.days/);
  expect(await held.textContent()).toContain(item.trim().slice(0, 12));
  expect(app.complaints).toEqual([]);
});
