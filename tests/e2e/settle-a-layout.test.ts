import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, barriers, keepPicture, openAnother } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const saysOf = (page: Page, words: RegExp): Promise<unknown> =>
  page.waitForFunction(
    ({ source }) => new RegExp(source).test(document.querySelector('.edit-says')?.textContent ?? ''),
    { source: words.source },
  );

test('the next best layout is taken because it is cheaper in pieces, and let go again', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' });
  const choices = page.locator('.backbone-choices');
  await choices.waitFor();
  expect(await choices.textContent()).toContain('Cheapest by the prices and hours entered, proven.');
  const before = await choices.locator('tbody').textContent();
  await keepPicture(page, 'choices-laptop-day');
  expect(await barriers(page)).toEqual([]);
  await choices.getByRole('button', { name: /take the next best/ }).press('Enter');
  await saysOf(page, /is laid out the next best way/);
  await choices.getByText('Settled by you').waitFor();
  await choices.getByRole('button', { name: /lay it out again/ }).press('Enter');
  await choices.getByRole('button', { name: /take the next best/ }).waitFor();
  expect(await choices.locator('tbody').textContent()).toBe(before);
  expect(app.complaints).toEqual([]);
});

test('the card of a unit says why its tee is where it is, and moves it', async () => {
  const page = await openAnother(app, { window: 'phone', light: 'night' });
  await page.locator('.balloon[data-about~="gnss"]').first().press('Enter');
  const part = page.locator('.card-part', { hasText: 'Why its tee is here' });
  await part.getByText('it would be').first().waitFor();
  expect(await part.textContent()).toMatch(/Its tee stands at .* with 2\.35\sm of\sdrop/);
  await keepPicture(page, 'tee-phone-night');
  await part
    .getByRole('button', { name: /move it there/ })
    .first()
    .press('Enter');
  await saysOf(page, /The tee of .* moves to/);
  await part.getByText('The layout is settled').waitFor();
  expect(app.complaints).toEqual([]);
});

/** Middle of the small mark that stands for an id on the strip, in pixels. */
const markOf = (page: Page, id: string): Promise<{ x: number; y: number }> =>
  page.evaluate((about) => {
    const boxes = [...document.querySelectorAll(`[data-about~="${about}"]`)]
      .filter((element) => !element.closest('.balloon'))
      .map((element) => element.getBoundingClientRect())
      .filter(({ width, height }) => width < 30 && height < 30);
    const [{ x, y, width, height } = new DOMRect()] = boxes;
    return { x: x + width / 2, y: y + height / 2 };
  }, id);

test('a tee dragged along the trunk says what it would cost, and settles where it is let go; Escape leaves it', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' });
  await page.locator('.drag-says').waitFor({ state: 'attached' });
  await page.locator('.backbone-choices').waitFor();
  const [from, to] = [await markOf(page, 'gnss.n2k'), await markOf(page, 'vhf-1.n2k')];
  const hold = async (): Promise<void> => {
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x + 3, to.y + 3, { steps: 8 });
    await page.locator('.drag-says', { hasText: 'it would be' }).waitFor();
  };
  await hold();
  expect(await page.locator('.drag-says').textContent()).toMatch(/3\.95\sm, for 7\.68\sEUR more/);
  await keepPicture(page, 'drag-laptop-day');
  await page.keyboard.press('Escape');
  await page.mouse.up();
  expect(await page.locator('.drag-says').isHidden()).toBe(true);
  expect(await page.locator('.edit-says').allTextContents()).toEqual(['']);
  await hold();
  await page.mouse.up();
  await saysOf(page, /The tee of .* moves to/);
  await page.locator('.backbone-choices').getByText('Settled by you').waitFor();
  expect(app.complaints).toEqual([]);
});

test('a line is led another way with a press, and back by undo', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' });
  const routes = page.locator('.block', { hasText: 'Routes of the other lines' });
  await routes.locator('.route-acts').first().waitFor();
  const row = routes.locator('.row', { has: page.getByRole('button', { name: /^lead it by/ }) }).first();
  const name = (await row.locator('.row-button').textContent())?.split(' ').slice(0, 3).join(' ') ?? '';
  const before = await row.locator('.row-fact').textContent();
  await row.getByRole('button', { name: /^lead it by/ }).press('Enter');
  await saysOf(page, /is led by/);
  const led = routes.locator('.row', { hasText: name }).filter({ hasText: 'settled' }).first();
  await led.waitFor();
  expect(await led.locator('.row-fact').textContent()).not.toBe(before);
  await page.locator('.edit-line').getByRole('button', { name: 'undo' }).click();
  await saysOf(page, /^Taken back/);
  expect(app.complaints).toEqual([]);
});
