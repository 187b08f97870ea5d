import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, boatOn, keepPicture, openAnother } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const toWork = async (page: Page): Promise<void> => {
  await page.locator('.course a', { hasText: 'Work' }).click();
  await page.locator('.work-days .balloon').first().waitFor();
};

test('the work stands by day, a job is ticked, held to a day by keys and let go by undo, and the day sheet is printed', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' });
  const boatText = (): string => readFileSync(join(app.folder, `${boatOn(page)}.boat.json`), 'utf8');
  await toWork(page);
  await page.locator('.work-days g[aria-label^="bilge pump: "]').waitFor();
  await keepPicture(page, 'work-laptop-day');

  await page.locator('.job-tick input').first().check();
  await expect.poll(() => page.locator('.waypoint.here').textContent()).toMatch(/1 of \d+ jobs done/);
  await page.locator('.work-days .balloon[aria-label$=", done"]').first().waitFor();
  const log = readFileSync(join(app.folder, `${boatOn(page)}.log.jsonl`), 'utf8');
  expect(log).toContain('"of":"job/');

  // days that are only counted get dates first
  const start = page.locator('.work-start input');
  if ((await start.count()) > 0) {
    await start.fill('2027-04-05');
    await start.press('Enter');
    await start.waitFor({ state: 'detached' });
    await expect.poll(boatText, { timeout: 10_000 }).toContain('"starts"');
  }
  const before = boatText();
  const job = page.locator('.work-days .balloon:not([aria-label$=", done"])').first();
  await job.focus();
  await job.press('Shift+ArrowRight');
  const undo = page.getByRole('button', { name: /^undo: Hold / });
  await undo.waitFor();
  await expect.poll(boatText, { timeout: 10_000 }).toMatch(/"jobs": \[\s*\{\s*"job": "[^"]+",\s*"day": "20/);
  await undo.click();
  await expect.poll(boatText, { timeout: 10_000 }).toBe(before);

  await page.getByRole('button', { name: 'day sheet', exact: true }).click();
  await page.locator('.day-paper h3', { hasText: 'Before you leave her' }).waitFor();
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
  await page.locator('.day-pages .day-paper').waitFor();
  expect(app.complaints).toEqual([]);
});
