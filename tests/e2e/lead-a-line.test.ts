import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, barriers, keepPicture, openAnother } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const drop = 'drop:ais.bus~nav';

const saysOf = (page: Page, words: RegExp): Promise<unknown> =>
  page.waitForFunction(
    ({ source }) => new RegExp(source).test(document.querySelector('.edit-says')?.textContent ?? ''),
    { source: words.source },
  );

/** A point in the middle of the drawn route of a line, in pixels. */
const middleOf = (page: Page, line: string): Promise<{ x: number; y: number }> =>
  page.evaluate((about) => {
    const paths = [...document.querySelectorAll<SVGPathElement>(`.sheet-layer [data-about~="${about}"] path`)];
    const [longest] = paths.sort((one, other) => other.getTotalLength() - one.getTotalLength());
    const matrix = longest?.getScreenCTM();
    if (longest === undefined || matrix === null || matrix === undefined) throw new Error(`${about} is not drawn`);
    const { x, y } = longest.getPointAtLength(longest.getTotalLength() / 2).matrixTransform(matrix);
    return { x, y };
  }, line);

/** Middle of the small mark that stands for a place on the drawing of the boat, in pixels. */
const placeOf = (page: Page, id: string): Promise<{ x: number; y: number }> =>
  page.evaluate((about) => {
    const [first] = [...document.querySelectorAll(`.sheet-layer [data-about~="${about}"]`)]
      .filter((element) => !element.closest('.balloon'))
      .map((element) => element.getBoundingClientRect())
      .filter(({ width, height }) => width < 30 && height < 30);
    const { x, y, width, height } = first ?? new DOMRect();
    return { x: x + width / 2, y: y + height / 2 };
  }, id);

const choose = async (page: Page): Promise<void> => {
  const rows = page.locator('.block', { hasText: 'Routes of the drops' });
  await rows
    .locator('.row-button', { hasText: /AIS class B/ })
    .first()
    .press('Enter');
  // the drawing has gone close to the drop, and she is to be seen whole
  await page.getByRole('button', { name: 'whole sheet' }).click();
  await page.locator('.drag-says').waitFor({ state: 'attached' });
};

test('the route of a drop dragged over another place says its price and the limit it breaks, Escape leaves it, letting go settles it', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' });
  await choose(page);
  const says = page.locator('.drag-says');
  const hold = async (): Promise<void> => {
    // the routes there are for it come from the worker
    await page.locator('.sheet-window.may-lead').waitFor();
    const [from, to] = [await middleOf(page, drop), await placeOf(page, 'helm-console')];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 8 });
    await says.getByText(/the limit for one drop is/).waitFor();
  };
  await hold();
  const told = (await says.textContent())?.replaceAll('\u00A0', ' ');
  expect(told).toMatch(/Through locker under the pilothouse helm: .*\d+\.\d\d m longer than now/);
  expect(told).toMatch(/The order would cost 67\.40 EUR more, but not within the limits:/);
  expect(told).toMatch(/The drop to AIS .* is 12\.20 m as bought; the limit for one drop is 6\.00 m/);
  expect(await page.locator('.route-led').getAttribute('d')).toMatch(/^M.*L/);
  await keepPicture(page, 'lead-laptop-day');
  expect(await barriers(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await page.mouse.up();
  expect(await says.isHidden()).toBe(true);
  expect(await page.locator('.route-led').count()).toBe(0);
  expect(await page.locator('.edit-says').allTextContents()).toEqual(['']);
  await hold();
  await page.mouse.up();
  await saysOf(page, /The drop .* is led through locker under the pilothouse helm/);
  await page.locator('.note', { hasText: 'the limit for one drop is' }).first().waitFor();
  await page.locator('.edit-line').getByRole('button', { name: 'undo' }).click();
  await saysOf(page, /^Taken back/);
  await page.locator('.note', { hasText: 'the limit for one drop is' }).first().waitFor({ state: 'detached' });
  expect(app.complaints).toEqual([]);
});

test('by the keyboard a route is chosen from a list, told of, shown on the drawing, and led there', async () => {
  const page = await openAnother(app, { window: 'phone', light: 'night' });
  const rows = page.locator('.block', { hasText: 'Routes of the drops' });
  const row = rows.locator('.row', { hasText: /AIS class B/ }).first();
  await row.getByRole('button', { name: 'lead it through another place' }).press('Enter');
  const other = row.getByRole('button', { name: /^through locker under the pilothouse helm/ });
  await other.press('Enter');
  await row.locator('.led-breaks', { hasText: 'the limit for one drop is' }).waitFor();
  expect(await page.locator('.route-led').getAttribute('d')).toMatch(/^M.*L/);
  await keepPicture(page, 'lead-phone-night');
  await page.keyboard.press('Escape');
  expect(await row.locator('.led-view').count()).toBe(0);
  expect(await page.locator('.route-led').count()).toBe(0);
  await row.getByRole('button', { name: 'lead it through another place' }).press('Enter');
  await other.press('Enter');
  await row.getByRole('button', { name: /^lead it there/ }).press('Enter');
  await saysOf(page, /The drop .* is led through locker under the pilothouse helm/);
  await rows.locator('.row', { hasText: 'settled' }).first().waitFor();
  expect(app.complaints).toEqual([]);
});
