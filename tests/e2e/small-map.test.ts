import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, openAnother } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

test('a long boat opens large enough to read, with a small map that takes the window anywhere on her', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' }, 'bonxie');
  const place = (): Promise<string> =>
    page.locator('.sheet-layer').evaluate((layer) => getComputedStyle(layer).transform);
  const label = await page.locator('.sheet-svg text').first().boundingBox();
  expect(label?.height).toBeGreaterThan(10);
  const map = await page.locator('.mini-map').boundingBox();
  if (map === null) throw new Error('The small map is not there.');
  const before = await place();
  await page.mouse.move(map.x + map.width * 0.4, map.y + map.height * 0.4);
  await page.mouse.down();
  await page.mouse.move(map.x + map.width * 0.9, map.y + map.height * 0.9, { steps: 4 });
  await page.mouse.up();
  expect(await place()).not.toBe(before);
  await expect.poll(() => page.locator('.mini-window').getAttribute('x').then(Number)).toBeGreaterThan(50);
  await page.getByRole('button', { name: 'whole sheet' }).click();
  expect(await page.locator('.mini-map').count()).toBe(0);
  expect(app.complaints).toEqual([]);
});
