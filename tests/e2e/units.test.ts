import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, keepPicture, openBoat } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const choiceOf = (page: Page, units: string) => page.getByRole('group', { name: 'Units of length' }).getByText(units);

test.each(['laptop', 'phone'] as const)(
  'on a %s lengths are said in feet, in both or in metres, as chosen once',
  async (window) => {
    const page = await app.newPage({ window, light: 'day' });
    await openBoat(app, page);
    const margin = page.locator('.margin');
    const says = page.locator('.top-says');
    expect(await margin.textContent()).toMatch(/\d\u00A0m\b/);
    await choiceOf(page, 'feet').click();
    expect(await says.textContent()).toContain('38\u00A0ft 9\u00A0in');
    expect(await margin.textContent()).not.toMatch(/\d\u00A0m\b/);
    await keepPicture(page, `feet-${window}-day`);
    await choiceOf(page, 'both').click();
    expect(await margin.textContent()).toMatch(/\d\u00A0m \(\d+\u00A0ft/);
    await page.reload();
    await page.locator('.margin').waitFor();
    expect(await choiceOf(page, 'both').getAttribute('aria-pressed')).toBe('true');
    expect(app.complaints).toEqual([]);
  },
);
