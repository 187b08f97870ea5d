import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, openAnother, type PageWish } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const gannetFile = new URL('../../examples/gannet/gannet.boat.json', import.meta.url);

/** Gannet with one more need that nothing aboard can meet, opened as a file from this machine. */
const openWithUnmetNeed = async (wish: PageWish): Promise<{ page: Page; unit: string }> => {
  const boat: { name: string; kit: { id: string; fate: string }[]; needs: { at: string }[] } = JSON.parse(
    await readFile(gannetFile, 'utf8'),
  );
  const unit = boat.needs[0]?.at ?? '';
  const needs = [...boat.needs, { reading: 'sonar-picture', instance: 77, at: unit, must: true }];
  const page = await app.samePage(wish);
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles({
      name: 'gannet.boat.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify({ ...boat, name: 'Gannet by hand', needs })),
    });
  await page.getByRole('heading', { name: 'Gannet by hand' }).waitFor();
  await page.locator('.sheet-svg .balloon').first().waitFor();
  return { page, unit };
};

const litBalloons = (page: Page): Promise<(string | null)[]> =>
  page.locator('.balloon.lit').evaluateAll((all) => all.map((one) => one.getAttribute('data-about')));

const missingNote = (page: Page) => page.locator('.note', { hasText: 'readings/needed-but-missing' }).first();

test('pressing a note lights the balloon of the same number on the drawing and takes the drawing there', async () => {
  const { page, unit } = await openWithUnmetNeed({ window: 'laptop', light: 'day' });
  const note = missingNote(page);
  await note.locator('h3').getByRole('button').click();
  await page.mouse.move(720, 20);
  expect((await litBalloons(page)).flatMap((about) => about?.split(' '))).toContain(unit);
  const number = await note.locator('.note-mark').textContent();
  const labels = await page
    .locator('.balloon.lit')
    .evaluateAll((all) => all.map((one) => one.getAttribute('aria-label')));
  expect(labels.map((label) => label?.split(',')[0])).toContain(number);
  const box = await page.locator('.balloon.lit .halo').first().boundingBox();
  expect(box?.x).toBeGreaterThan(188);
  expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThan(1440 - 336);
  expect(app.complaints).toEqual([]);
});

test('the keyboard alone goes from the note to its balloon and from a balloon to its note', async () => {
  const { page, unit } = await openWithUnmetNeed({ window: 'laptop', light: 'night' });
  await missingNote(page).locator('h3').getByRole('button').focus();
  expect((await litBalloons(page)).flatMap((about) => about?.split(' '))).toContain(unit);
  await page.locator('.balloon[tabindex="0"]').focus();
  const first = await page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
  await page.keyboard.press('ArrowRight');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).not.toBe(first);
  await page.locator(`.balloon[data-about~="${unit}"]`).first().focus();
  await page.keyboard.press('Enter');
  expect(await page.locator('.note.lit').count()).toBeGreaterThan(0);
  expect(app.complaints).toEqual([]);
});

test('Gannet as she is: her doubt about a way never opened lights the cables that are to go through it', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' });
  const note = page.locator('.note', { hasText: 'ways/led-through-unseen-way' });
  expect(await page.locator('.lit[data-about~="g18"]').count()).toBe(0);
  await note.locator('h3').getByRole('button').click();
  expect(await page.locator('.lit[data-about~="g18"]').count()).toBeGreaterThan(0);
  expect(app.complaints).toEqual([]);
});

test('plus, minus, 0 and the arrow keys change how the drawing lies', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' });
  // as numbers, since a drawing that was never moved may have none
  const lie = () =>
    page.locator('.sheet-layer').evaluate((layer) => new DOMMatrix(getComputedStyle(layer).transform).toString());
  const whole = await lie();
  await page.locator('.sheet-svg').focus();
  await page.keyboard.press('+');
  const closer = await lie();
  expect(closer).not.toBe(whole);
  await page.keyboard.press('ArrowRight');
  expect(await lie()).not.toBe(closer);
  await page.keyboard.press('0');
  expect(await lie()).toBe(whole);
});

test('on a phone a tapped note brings its balloon into the window', async () => {
  const { page } = await openWithUnmetNeed({ window: 'phone', light: 'day' });
  await missingNote(page).locator('h3').getByRole('button').tap();
  const box = await page.locator('.balloon.lit .halo').first().boundingBox();
  expect(box?.x).toBeGreaterThanOrEqual(0);
  expect(box?.y).toBeGreaterThanOrEqual(0);
  expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(390);
  expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(844);
  expect(app.complaints).toEqual([]);
});

test('a file that is no boat is turned away in the page and the boat that was open stays', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' });
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles({
      name: 'broken.boat.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{ "format": "fairlead-boat", '),
    });
  await page.getByRole('alert').waitFor();
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Gannet');
  expect(await page.locator('.balloon').count()).toBeGreaterThan(0);
  await page.getByRole('button', { name: 'back to the boat' }).click();
  expect(await page.getByRole('alert').count()).toBe(0);
  expect(app.complaints).toEqual([]);
});
