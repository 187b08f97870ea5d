import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

/** Sums up how far what is seen moves by itself; as text, since it runs in the page before anything else does. */
const watch = `globalThis.moved = 0;
new PerformanceObserver((list) => { for (const { value } of list.getEntries()) globalThis.moved += value; })
  .observe({ type: 'layout-shift', buffered: true });`;

test.each(['boat', 'buy'])('nothing moves by itself while a boat opens at the step %s', async (step) => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  await page.addInitScript(watch);
  await page.goto(`${app.address}/#/boat/sandpiper/${step}`);
  await page.locator('.notes').waitFor();
  await page.locator('.progress:empty').waitFor({ state: 'attached' });
  await page.locator('.all-words').waitFor();
  // the share of the window that moves, as browsers reckon it; more than 0.1 is felt
  expect(Number(await page.evaluate('globalThis.moved'))).toBeLessThan(0.05);
});
