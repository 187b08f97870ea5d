import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import {
  type AppUnderTest,
  appUnderTest,
  barriers,
  keepPicture,
  openAnother,
  type PageWish,
  settled,
} from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const said = async (page: Page): Promise<string> => (await page.locator('.edit-says').textContent()) ?? '';

/** Everything that is drawn and noted, to tell whether two plans are the same. */
const seen = (page: Page): Promise<string> =>
  page.evaluate(() =>
    ['.sheet-layer', '.notes', '.course'].map((part) => document.querySelector(part)?.textContent).join('\n'),
  );

/** Opens Gannet and picks the unit that says where she is. */
const pickedGnss = async (wish: PageWish): Promise<Page> => {
  const page = await openAnother(app, wish);
  await page.locator('.balloon[data-about~="gnss"]').first().press('Enter');
  await page.locator('.picked').waitFor();
  return page;
};

const choose = async (page: Page, fate: string): Promise<void> => {
  await page.locator('.picked').getByRole('button', { name: fate, exact: true }).click();
  await page.waitForFunction(() => document.querySelector('.edit-says')?.textContent?.includes('finding') === true);
  await settled(page);
};

const undoButton = (page: Page) => page.getByRole('button', { name: /^undo: / });

test('a unit that goes ashore takes its readings along, and comes back to the same drawing and notes by undo', async () => {
  const page = await pickedGnss({ window: 'laptop', light: 'day' });
  const before = await seen(page);
  await choose(page, 'goes ashore');
  expect(await said(page)).toMatch(/goes in phase 1\. .*\d+ new.*no longer/);
  expect(await seen(page)).not.toBe(before);
  expect(await undoButton(page).getAttribute('aria-label')).toMatch(/^undo: .* goes in phase 1\.$/);
  await keepPicture(page, 'edited-laptop-day');
  await page.locator('.edit-line').getByRole('button', { name: 'undo' }).click();
  await page.waitForFunction(
    () => document.querySelector('.edit-says')?.textContent?.startsWith('Taken back') === true,
  );
  await settled(page);
  expect(await seen(page)).toBe(before);
  expect(app.complaints).toEqual([]);
});

test('a missing reading is followed from its note to a cure, and back by undo', async () => {
  const page = await pickedGnss({ window: 'laptop', light: 'day' });
  await choose(page, 'goes ashore');
  const broken = await seen(page);
  const note = page.locator('.note', { hasText: 'does not arrive' }).first();
  await keepPicture(page, 'cure-laptop-day');
  await note.locator('.cure-link').first().press('Enter');
  await page.waitForFunction(() => document.querySelector('.edit-says')?.textContent?.includes('less') === true);
  await settled(page);
  expect(await said(page)).toMatch(/findings? less/);
  await keepPicture(page, 'cured-laptop-day');
  await page.keyboard.press('Control+z');
  await page.getByText('Taken back:').waitFor();
  await settled(page);
  expect(await seen(page)).toBe(broken);
  expect(app.complaints).toEqual([]);
});

test('advice is accepted with a reason, which stays with the boat, and is opened again', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' });
  await settled(page);
  const note = page.locator('.note.doubt').first();
  const title = (await note.locator('h3 button').textContent()) ?? '';
  await note.getByRole('button', { name: /^accept: / }).click();
  await note.getByRole('button', { name: 'accept', exact: true }).click();
  expect(await note.getByRole('alert').textContent()).toMatch(/Say why/);
  await note.getByRole('textbox').fill('Measured aboard; it is well.');
  await note.getByRole('textbox').press('Enter');
  const accepted = page.locator('.accepted-notes');
  await accepted.locator('summary').click();
  expect(await accepted.textContent()).toContain('Measured aboard; it is well.');
  await accepted
    .getByRole('button', { name: /^open again/ })
    .first()
    .click();
  await page.locator('.note.doubt h3', { hasText: title }).first().waitFor();
  expect(app.complaints).toEqual([]);
});

test('the keys take a step back and make it again, but not while somebody types', async () => {
  const page = await pickedGnss({ window: 'laptop', light: 'night' });
  await choose(page, 'goes ashore');
  await keepPicture(page, 'edited-laptop-night');
  const edited = await seen(page);
  await page.keyboard.press('Control+z');
  await page.getByText('Taken back:').waitFor();
  await settled(page);
  await page.keyboard.press('Control+Shift+z');
  await page.getByText('Made again:').waitFor();
  await settled(page);
  expect(await seen(page)).toBe(edited);
  await page.evaluate(() => {
    const field = document.createElement('input');
    document.body.append(field);
    field.focus();
  });
  await page.keyboard.press('Control+z');
  expect(await said(page)).toContain('Made again:');
  await page.evaluate(() => document.body.querySelector(':scope > input')?.remove());
  expect(app.complaints).toEqual([]);
});

test.each(['laptop', 'phone'] as const)('an edited boat on a %s has no barrier that axe knows', async (window) => {
  const page = await pickedGnss({ window, light: 'day' });
  await choose(page, 'goes ashore');
  expect(await barriers(page)).toEqual([]);
  const widthPx = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(widthPx).toBeLessThanOrEqual(page.viewportSize()?.width ?? 0);
  await keepPicture(page, `edited-${window}-day`);
  expect(app.complaints).toEqual([]);
});

test('at the step of buying, what is ordered is marked as such, and stays so by the name of its item', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' }, 'sandpiper/buy');
  const row = page.locator('.margin .row:has(.order-button)', { hasText: 'AIS class B' }).first();
  await row.getByRole('button', { name: 'ordered', exact: true }).click();
  await page.waitForFunction(() => document.querySelector('.edit-says')?.textContent?.includes(': ordered.') === true);
  await settled(page);
  await page.waitForFunction(() => document.querySelectorAll('.order-button[aria-pressed="true"]').length === 1);
  await keepPicture(page, 'buy-laptop-day');
  expect(await barriers(page)).toEqual([]);
  expect(app.complaints).toEqual([]);
});
