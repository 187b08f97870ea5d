import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, barriers, keepPicture, openBoat } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

test('the binder is set in the page, looked at sheet by sheet, stopped, and saved as a PDF', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  await openBoat(app, page, 'sandpiper/binder');
  const block = page.locator('.binder-block');
  await block.getByLabel('paper').selectOption('letter');
  await block.getByLabel('day on every sheet').fill('2026-11-26');
  await block.getByRole('button', { name: 'set the binder' }).click();
  const save = block.getByRole('button', { name: 'save the binder' });
  await save.waitFor({ timeout: 30_000 });
  const sheets = Number(/^(\d+) sheets/.exec((await block.getByText(/sheets\. Print/).textContent()) ?? '')?.[1]);
  expect(sheets).toBeGreaterThan(30);
  await block.getByRole('button', { name: 'the next sheet' }).click();
  await block.locator('p', { hasText: `sheet 2 of ${sheets}` }).waitFor();
  expect(await block.locator('.binder-page').first().textContent()).toContain('Contents');
  await block.locator('.binder-turn select').selectOption({ label: 'Test record' });
  expect(await block.locator('.binder-page').first().textContent()).toContain('Before a panel is shut');
  await block.getByRole('button', { name: /in full$/ }).click();
  await page.keyboard.press('ArrowRight');
  expect(await page.locator('dialog .binder-page').textContent()).not.toContain('Before a panel is shut');
  await keepPicture(page, 'binder-laptop-day');
  expect(await barriers(page)).toEqual([]);
  await page.keyboard.press('Escape');
  const [download] = await Promise.all([page.waitForEvent('download'), save.click()]);
  expect(download.suggestedFilename()).toBe('sandpiper-binder.pdf');
  const kept = mkdtempSync(join(tmpdir(), 'fairlead-binder-'));
  await download.saveAs(join(kept, 'binder.pdf'));
  const file = readFileSync(join(kept, 'binder.pdf'));
  rmSync(kept, { recursive: true });
  expect(file.subarray(0, 8).toString('latin1')).toBe('%PDF-1.7');
  expect(file.toString('latin1').match(/\/Type \/Page\b(?!s)/g)?.length).toBe(sheets);
  // asked anew and stopped, nothing of it stays but the sheets that were set
  await block.getByRole('button', { name: 'set the binder' }).click();
  await block.getByRole('button', { name: 'stop', exact: true }).click();
  expect(await save.count()).toBe(0);
  expect(app.complaints).toEqual([]);
});
