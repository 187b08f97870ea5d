import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, keepPicture, openBoat } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const choiceOf = (page: Page, units: string) => page.getByRole('group', { name: 'Units of length' }).getByText(units);

/** Chooses units where the window has room for them, and else in the list of all that can be done. */
const choose = async (page: Page, window: 'laptop' | 'phone', units: string): Promise<void> => {
  if (window === 'laptop') {
    await choiceOf(page, units).click();
    return;
  }
  await page.getByRole('button', { name: 'what can be done here' }).click();
  await page.getByRole('combobox', { name: 'Type what you want to do' }).fill(`lengths in ${units}`);
  await page.keyboard.press('Enter');
};

test.each(['laptop', 'phone'] as const)(
  'on a %s lengths are said in feet, in both or in metres, as chosen once',
  async (window) => {
    const page = await app.newPage({ window, light: 'day' });
    await openBoat(app, page);
    const margin = page.locator('.margin');
    const says = page.locator('.top-says');
    expect(await margin.textContent()).toMatch(/\d\u00A0m\b/);
    await choose(page, window, 'feet');
    expect(await says.textContent()).toContain('38\u00A0ft 9\u00A0in');
    expect(await margin.textContent()).not.toMatch(/\d\u00A0m\b/);
    await keepPicture(page, `feet-${window}-day`);
    await choose(page, window, 'both');
    expect(await margin.textContent()).toMatch(/\d\u00A0m \(\d+\u00A0ft/);
    await page.reload();
    await margin
      .getByText(/\d\u00A0m \(\d+\u00A0ft/)
      .first()
      .waitFor();
    if (window === 'laptop') expect(await choiceOf(page, 'both').getAttribute('aria-pressed')).toBe('true');
    expect(app.complaints).toEqual([]);
  },
);
