import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, keepPicture, openAnother } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const openAtBoat = async (): Promise<Page> => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' }, 'sandpiper/boat');
  await page.locator('.place-mark').first().waitFor();
  return page;
};

/** A place in each view: from the side, from above. */
const marksOf = (page: Page, place: string) => page.locator(`[data-place="${place}"]`);

const middleOf = async (page: Page, place: string, view: number): Promise<{ x: number; y: number }> => {
  const box = await marksOf(page, place).nth(view).locator('.place-ring').boundingBox();
  if (box === null) throw new Error(`${place} is not drawn`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

const said = (page: Page, start: string): Promise<unknown> =>
  page.waitForFunction((words) => document.querySelector('.edit-says')?.textContent?.startsWith(words) === true, start);

const undo = async (page: Page): Promise<void> => {
  await page.locator('.edit-line').getByRole('button', { name: 'undo' }).click();
  await said(page, 'Taken back');
};

/** The first place from aft, and its name. */
const firstPlace = async (page: Page): Promise<string> =>
  (await page.locator('.place-mark').nth(3).getAttribute('data-place')) ?? '';

test('a place dragged from the side moves along in the view from above, and undo brings both back', async () => {
  const page = await openAtBoat();
  const place = await firstPlace(page);
  const [side, top] = [await middleOf(page, place, 0), await middleOf(page, place, 1)];
  await page.mouse.move(side.x, side.y);
  await page.mouse.down();
  await page.mouse.move(side.x + 60, side.y - 30, { steps: 4 });
  expect(await page.locator('.drag-says').textContent()).toMatch(
    /m forward of the transom, .*m above the water\..* Straight to /,
  );
  await page.mouse.up();
  await said(page, 'Move ');
  const [sideAfter, topAfter] = [await middleOf(page, place, 0), await middleOf(page, place, 1)];
  expect(Math.abs(sideAfter.x - side.x - 60)).toBeLessThan(8);
  expect(Math.abs(sideAfter.y - side.y + 30)).toBeLessThan(8);
  expect(topAfter.x - top.x).toBeCloseTo(sideAfter.x - side.x, 0);
  expect(topAfter.y).toBeCloseTo(top.y, 0);
  await keepPicture(page, 'boat-hand-laptop-day');
  await undo(page);
  expect(await middleOf(page, place, 0)).toEqual(side);
  expect(await middleOf(page, place, 1)).toEqual(top);
  expect(app.complaints).toEqual([]);
});

test('by the keyboard a picked place moves a step at a time, a run of presses being one step of undo', async () => {
  const page = await openAtBoat();
  const place = await firstPlace(page);
  const mark = marksOf(page, place).first();
  const label = (await mark.getAttribute('aria-label')) ?? '';
  const forwardM = Number(/([\d.]+)\sm forward/.exec(label)?.[1]);
  await mark.focus();
  await page.keyboard.press('Enter');
  for (let press = 0; press < 4; press += 1) await page.keyboard.press('ArrowRight');
  await said(page, 'Move ');
  expect(Number(/([\d.]+)\sm forward/.exec((await mark.getAttribute('aria-label')) ?? '')?.[1])).toBeCloseTo(
    forwardM + 0.2,
    6,
  );
  expect(await page.evaluate(() => document.activeElement?.getAttribute('data-place'))).toBe(place);
  await undo(page);
  expect(await mark.getAttribute('aria-label')).toContain(label.split(': ')[1]);
  expect(await page.getByRole('button', { name: 'undo: There is nothing to undo.' }).count()).toBe(1);
});

test('a way is split halfway, made one again, and its bore typed in inches', async () => {
  const page = await openAtBoat();
  await page.locator('.boat-list summary').click();
  const ways = page.locator('.boat-list fieldset').nth(1).locator('input');
  const count = await ways.count();
  await ways.first().check();
  await page.getByRole('button', { name: 'split the picked way halfway' }).click();
  await said(page, 'Put between ');
  await page.locator('[data-form] input[name="name"]:focus').waitFor();
  expect(await ways.count()).toBe(count + 1);
  await page.getByRole('button', { name: 'make one way of the two over the picked place' }).click();
  await said(page, 'Make one way ');
  expect(await ways.count()).toBe(count);
  await ways.first().check();
  await page.locator('input[name="bore"]').fill('1 1/4 in');
  await page.keyboard.press('Enter');
  await said(page, 'Change the way ');
  expect(await page.locator('input[name="bore"]').inputValue()).toBe('31.75 mm');
  expect(app.complaints).toEqual([]);
});
