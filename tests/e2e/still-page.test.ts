import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest } from './app-under-test.ts';
import { scriptsBeforePicture } from './scripts-before-picture.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

/** Sums up how far what is seen moves by itself; as text, since it runs in the page before anything else does. */
const watch = `globalThis.moved = 0;
new PerformanceObserver((list) => { for (const { value } of list.getEntries()) globalThis.moved += value; })
  .observe({ type: 'layout-shift', buffered: true });`;

/** Notes the scripts that were asked for until the first balloon is in the page. */
const noteScripts = `new MutationObserver((_, watcher) => {
  if (document.querySelector('.sheet-svg .balloon') === null) return;
  watcher.disconnect();
  globalThis.scriptsBefore = performance.getEntriesByType('resource')
    .flatMap(({ name }) => /assets\\/(.*\\.js)$/.exec(name)?.[1] ?? []);
}).observe(document, { childList: true, subtree: true });`;

test.each(['boat', 'buy'])(
  'a boat opens at the step %s: nothing moves by itself, and no script comes before her that is not counted',
  async (step) => {
    const page = await app.newPage({ window: 'laptop', light: 'day' });
    await page.addInitScript(watch);
    await page.addInitScript(noteScripts);
    await page.goto(`${app.address}/#/boat/sandpiper/${step}`);
    await page.locator('.notes').waitFor();
    await page.locator('.progress:empty').waitFor({ state: 'attached' });
    await page.locator('.all-words').waitFor();
    // the share of the window that moves, as browsers reckon it; more than 0.1 is felt
    expect(Number(await page.evaluate('globalThis.moved'))).toBeLessThan(0.05);
    const counted = scriptsBeforePicture(new URL('../../dist/web/assets/', import.meta.url));
    const asked = await page.evaluate<string[]>('globalThis.scriptsBefore');
    expect(asked.length).toBeGreaterThan(0);
    expect(asked.filter((name) => !counted.includes(name))).toEqual([]);
  },
);
