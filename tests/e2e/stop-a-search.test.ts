import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, barriers, keepPicture } from './app-under-test.ts';
import { hardBoat } from './hard-boat.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
  writeFileSync(join(app.folder, 'ladder.boat.json'), hardBoat(8, { places: 120, devices: 40 }));
});
afterAll(() => app.close());

test.each([
  { window: 'laptop', light: 'day' },
  { window: 'phone', light: 'night' },
] as const)('a long search says what it has and settles with that when it is stopped, on a $window', async (wish) => {
  const page = await app.newPage(wish);
  // pressed by the page itself as soon as there is a price, so that no fast machine is through before
  await page.addInitScript(() => {
    const watch = new MutationObserver(() => {
      const progress = document.querySelector('.progress');
      if (!progress?.textContent?.includes('so far')) return;
      watch.disconnect();
      document.documentElement.dataset.said = progress.textContent;
      progress.querySelector('button')?.click();
    });
    watch.observe(document, { childList: true, subtree: true, characterData: true });
  });
  await page.goto(`${app.address}/#/boat/ladder/lines`);
  const choices = page.locator('.backbone-choices');
  await choices.getByText('The search was stopped').waitFor();
  expect(await page.evaluate(() => document.documentElement.dataset.said)).toMatch(
    /lay Navigation bus\. [\d.]+ EUR so far; none can be under [\d.]+ EUR\. stop with what is found/,
  );
  await page.locator('.progress:empty').waitFor({ state: 'attached' });
  expect(await choices.textContent()).toMatch(/another layout could save [\d.]+\sEUR at most/);
  await choices.scrollIntoViewIfNeeded();
  await keepPicture(page, `stopped-${wish.window}-${wish.light}`);
  expect(await barriers(page)).toEqual([]);
  expect(app.complaints).toEqual([]);
});
