import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, openAnother } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(async () => {
  await app.close();
});

test('pilot and drive stand at the step Power, point by point behind a press, with the caution and the steering places', async () => {
  const page = await openAnother(app, { window: 'phone', light: 'night' }, 'gannet/power');
  const points = page.locator('.drive-points');
  await page.getByRole('heading', { name: 'Computer against drive' }).waitFor();
  expect(await points.locator('visible=true').count()).toBe(0);
  await page.getByText('point by point').first().click();
  const peak = points.locator('tr', { hasText: 'current at its peak' });
  expect(await peak.locator('td').allTextContents()).toEqual(
    ['20 A', '18 A', 'fits'].map((text) => expect.stringMatching(text.replace(' ', '\\s'))),
  );
  expect(await page.getByText('Prove at the berth').count()).toBe(1);
  expect(await page.getByText('freed by a hard-wired switch').count()).toBe(2);
  const widths = await points
    .first()
    .evaluate((element) => [element.scrollWidth, element.parentElement?.clientWidth ?? 0]);
  expect(widths[0]).toBeLessThanOrEqual(widths[1] ?? 0);
  expect(app.complaints).toEqual([]);
});
