import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, keepPicture, openAnother } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

test.each(['laptop', 'phone'] as const)('what can be done is found by typing, on a %s', async (window) => {
  const page = await openAnother(app, { window, light: 'day' });
  await page.keyboard.press('/');
  const field = page.getByRole('combobox', { name: 'Type what you want to do' });
  await field.waitFor();
  await field.fill('go power');
  await keepPicture(page, `commands-${window}-day`);
  await field.press('Enter');
  await page.waitForURL(/power$/);
  await page.getByRole('button', { name: 'what can be done here' }).click();
  await field.fill('light night');
  await page.getByRole('option').first().click();
  expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('night');
  // the page stands for other tests, which want it as it was
  await page.keyboard.press('/');
  await field.fill('light day');
  await field.press('Enter');
  expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('day');
  await page.keyboard.press('/');
  await field.press('Escape');
  expect(await field.count()).toBe(0);
  expect(app.complaints).toEqual([]);
});
