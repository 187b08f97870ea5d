import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, boatOn, keepPicture, openAnother, settled } from './app-under-test.ts';
import { smallTargets } from './looked-at.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

/** Writes a reading into the line of the nth test that takes one. */
const write = async (page: Page, at: number, value: string): Promise<void> => {
  const field = page.locator('#prove-tests .test-entry input:not(.test-causes *)').nth(at);
  await field.fill(value);
  await field.press('Enter');
};

const logOf = (boat: string): readonly Record<string, unknown>[] =>
  readFileSync(join(app.folder, `${boat}.log.jsonl`), 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as Record<string, unknown>);

test('a reading at the dock is judged, traced to its cause, kept beside the boat and still there when she is opened again', async () => {
  const page = await openAnother(app, { window: 'phone', light: 'night' }, 'sandpiper/prove');
  const bus = page.locator('#prove-tests summary', { hasText: 'Bus:' }).first();
  await bus.click();
  await write(page, 0, '119');
  await page.getByText('What it comes from, likeliest first').waitFor();
  await page.getByText(/^Measure next: /).waitFor();
  await keepPicture(page, 'prove-phone-night');
  expect(await smallTargets(page)).toEqual([]);
  await expect.poll(() => page.locator('.waypoint.here').textContent()).toContain('1 test came out wrong');
  await expect.poll(() => logOf(boatOn(page)).length).toBe(1);
  expect(logOf(boatOn(page))[0]).toMatchObject({ kind: 'reading', value: 119 });
  await page.reload();
  await page.locator('.sheet-svg .balloon').first().waitFor();
  await settled(page);
  await expect.poll(() => page.locator('.waypoint.here').textContent()).toContain('1 test came out wrong');
  await bus.click();
  await write(page, 0, '60.1');
  await page.getByText('What it comes from, likeliest first').waitFor({ state: 'detached' });
  await expect.poll(() => page.locator('.waypoint.here').textContent()).toMatch(/1 of \d+ tests tried/);
  expect(app.complaints).toEqual([]);
});

test('a recording is held against the plan, and who the units are comes into the boat as one step', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' }, 'gannet/prove');
  const recording = page.locator('#prove-recording');
  await recording
    .locator('input[type="file"]')
    .setInputFiles(join(app.folder, 'gannet/gannet-at-the-dock.candump.log'));
  await recording.getByText('13 of 15 units found').waitFor();
  await recording.getByText(/^Battery monitor with bus port was not heard\./).waitFor();
  await keepPicture(page, 'prove-recording-laptop-day');
  await recording.getByRole('button', { name: 'Take over who the units are' }).click();
  const undo = page.getByRole('button', { name: /^undo: / });
  await undo.waitFor();
  const identities = (): number =>
    readFileSync(join(app.folder, `${boatOn(page)}.boat.json`), 'utf8').split('"identity"').length - 1;
  await expect.poll(identities, { timeout: 10_000 }).toBeGreaterThan(8);
  await undo.click();
  await expect.poll(identities, { timeout: 10_000 }).toBe(0);
  expect(app.complaints).toEqual([]);
});
