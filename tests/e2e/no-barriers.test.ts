import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, barriers, keepPicture, openBoat, windows } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const wishes = (['laptop', 'phone'] as const).flatMap((window) =>
  (['day', 'night'] as const).map((light) => ({ window, light })),
);

test.each(wishes)(
  'Gannet on a $window by $light has no barrier that axe knows and nothing past the edge',
  async (wish) => {
    const page = await app.newPage(wish);
    await openBoat(app, page);
    expect(await barriers(page)).toEqual([]);
    const widthPx = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(widthPx).toBeLessThanOrEqual(windows[wish.window].width);
    await keepPicture(page, `gannet-${wish.window}-${wish.light}`);
    expect(app.complaints).toEqual([]);
  },
);

test('the list of boats and the list of a drawing have no barrier that axe knows', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  await page.goto(app.address);
  await page.locator('.boats a').first().waitFor();
  expect(await barriers(page)).toEqual([]);
  await openBoat(app, page);
  await page.getByRole('button', { name: 'show as a list' }).click();
  await page.getByRole('table', { name: 'Everything on the drawing' }).waitFor();
  expect(await barriers(page)).toEqual([]);
  expect(app.complaints).toEqual([]);
});
