import { readFileSync } from 'node:fs';
import { join } from 'node:path';
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

const opened = async (wish: PageWish): Promise<Page> => {
  const page = await openAnother(app, wish);
  await page.locator('.course a', { hasText: 'Kit' }).click();
  await page.getByRole('searchbox').waitFor();
  return page;
};

const said = (page: Page, words: string): Promise<unknown> =>
  page.waitForFunction((text) => document.querySelector('.edit-says')?.textContent?.includes(text) === true, words);

interface Saved {
  readonly kit: readonly { readonly id: string; readonly place: string; readonly fate: string }[];
  readonly needs: readonly { readonly at: string; readonly reading: string }[];
}

/** What the file of the boat in a page holds. */
const saved = (page: Page): Saved => {
  const [, boat] = /#\/boat\/([^/]+)/.exec(page.url()) ?? [];
  return JSON.parse(readFileSync(join(app.folder, `${boat}.boat.json`), 'utf8'));
};

test('a screen is found in plain words, put aboard by pick and place, and asks for what a screen usually shows', async () => {
  const page = await opened({ window: 'laptop', light: 'day' });
  const search = page.getByRole('searchbox');
  await search.fill('small chart plotter');
  await search.press('Enter');
  await page
    .getByRole('button', { name: /^put .* at / })
    .first()
    .waitFor();
  await keepPicture(page, 'kit-picked-laptop-day');
  await page.keyboard.press('Enter');
  await said(page, 'needs.');
  await expect.poll(() => saved(page).kit.find(({ id }) => id === 'display')?.fate, { timeout: 20_000 }).toBe('comes');
  expect(
    saved(page)
      .needs.filter(({ at }) => at === 'display')
      .map(({ reading }) => reading),
  ).toEqual(expect.arrayContaining(['position', 'depth', 'heading', 'ais-targets']));
  expect(app.complaints).toEqual([]);
});

test('one goes and another comes to the same place as one step, which is taken back', async () => {
  const page = await opened({ window: 'laptop', light: 'day' });
  await page.getByRole('button', { name: 'more that can be done with 4-inch colour instrument, flybridge' }).click();
  await page.getByRole('button', { name: 'this goes, another comes …' }).click();
  await page.getByRole('heading', { name: 'In place of 4-inch colour instrument, flybridge' }).waitFor();
  await page.getByRole('searchbox').fill('black and white');
  await page.locator('.kit-found .row-button').first().click();
  await said(page, 'Monochrome instrument comes to the same place.');
  await expect.poll(() => saved(page).kit.some(({ id }) => id === 'instr-fly'), { timeout: 20_000 }).toBe(false);
  await page.locator('.edit-line').getByRole('button', { name: 'undo' }).click();
  await said(page, 'Taken back');
  await page.getByRole('button', { name: 'more that can be done with 4-inch colour instrument, flybridge' }).waitFor();
});

test('a table pasted from a manual is shown as it was understood, and becomes a sheet of the unit’s own', async () => {
  const page = await opened({ window: 'laptop', light: 'day' });
  await page.getByRole('button', { name: 'more that can be done with 10 Hz position antenna' }).click();
  await page.getByRole('button', { name: 'its sheet, from the manual …' }).click();
  await page.getByText('Port n2k').click();
  await page
    .getByRole('textbox', { name: /Type or paste/ })
    .fill('PGN\tName\tTx\tRx\n127258\tMagnetic Variation\tx\t\n65345\town\t\tx\n130816 to 131000');
  await page.locator('.pasted-rows').getByText('is a range of 185 numbers').waitFor();
  await page.getByRole('button', { name: 'take in 2 messages' }).click();
  await page.getByLabel('Where it was read').fill('manual, page 12');
  await page.getByRole('button', { name: 'done', exact: true }).click();
  await said(page, 'The sheet of 10 Hz position antenna from its manual.');
  await page.locator('.sheet-editor').waitFor({ state: 'detached' });
  expect(app.complaints).toEqual([]);
});

interface WithChanges {
  readonly kit: readonly { readonly id: string; readonly sheet: string; readonly changes?: readonly object[] }[];
}

test('what is entered for one unit only is kept beside its sheet, and what a converter passes on is struck out', async () => {
  const page = await opened({ window: 'laptop', light: 'night' });
  const editor = page.locator('.sheet-editor');
  const more = (name: string) => page.getByRole('button', { name: `more that can be done with ${name}` }).click();
  const open = async (name: string): Promise<void> => {
    await more(name);
    await page.getByRole('button', { name: 'its sheet, from the manual …' }).click();
    await editor.waitFor();
  };
  await open('10 Hz position antenna');
  await page.getByLabel('only this unit, which differs from its sheet').check();
  await page.getByLabel('How that is known').selectOption('manual');
  await page.getByText('Port n2k').click();
  await page.getByLabel('LEN (50 mA each)').fill('7');
  await editor.getByText('ports › n2k › len: 7').waitFor();
  await page.getByText('Compass, water, battery, terminator').click();
  await page.getByRole('textbox', { name: 'From a compass at least' }).fill('1 ft');
  await page.getByLabel('IP code').fill('IP67');
  expect(await barriers(page)).toEqual([]);
  await keepPicture(page, 'sheet-of-one-unit-laptop-night');
  await page.getByRole('button', { name: 'done', exact: true }).click();
  await said(page, '10 Hz position antenna differs from its sheet.');
  await editor.waitFor({ state: 'detached' });
  // reason: the file of the boat, of which only this is looked at
  const unit = (id: string) => (saved(page) as unknown as WithChanges).kit.find((one) => one.id === id);
  await expect
    .poll(() => unit('gnss')?.changes, { timeout: 20_000 })
    .toEqual(
      expect.arrayContaining([
        { path: 'ports.n2k.len', value: 7, how: 'manual' },
        { path: 'compassSafe.valueM', value: 0.305, how: 'manual' },
      ]),
    );
  await more('10 Hz position antenna');
  await open('small converter, bus to 0183 only, one 4800 output');
  await page.getByText('What it passes on between its ports').click();
  await page.getByRole('button', { name: 'leave out variation' }).click();
  await page.getByRole('button', { name: 'done', exact: true }).click();
  await said(page, 'from its manual.');
  expect(app.complaints).toEqual([]);
});

test('a unit is dragged on the drawing from one place to another', async () => {
  const page = await opened({ window: 'laptop', light: 'day' });
  const balloon = page.locator('.balloon[data-about~="heading"] circle').first();
  // the place of the display, where its drop ends
  const goal = page.locator('.balloon[data-about~="mfd-helm"] circle').first();
  const [from, to] = [await balloon.boundingBox(), await goal.boundingBox()];
  if (from === null || to === null) throw new Error('the balloons are not to be seen');
  await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
  await page.mouse.down();
  await page.mouse.move(from.x - 12, from.y, { steps: 4 });
  const says = page.locator('.drag-says');
  await says.getByText('heading sensor').waitFor();
  // along the boat until it is over some place
  for (let step = 0; step < 40 && (await says.textContent())?.includes('let it go') === true; step += 1)
    await page.mouse.move(from.x - 12 - 8 * step, to.y);
  await page.mouse.up();
  await said(page, 'Move ');
  await settled(page);
  // what is planned anew while a unit is in the hand does not take it away
  const now = await balloon.boundingBox();
  if (now === null) throw new Error('the balloon is not to be seen');
  await page.mouse.move(now.x + now.width / 2, now.y + now.height / 2);
  await page.mouse.down();
  await page.mouse.move(now.x - 12, now.y, { steps: 4 });
  await says.getByText('heading sensor').waitFor();
  await page.keyboard.press('Control+z');
  await said(page, 'Taken back');
  await settled(page);
  await expect.poll(() => says.isVisible()).toBe(true);
  expect(await says.textContent()).toContain('heading sensor');
  await page.keyboard.press('Escape');
  await says.waitFor({ state: 'hidden' });
  await page.mouse.up();
});

test('on a phone a unit is put aboard by two taps', async () => {
  const page = await opened({ window: 'phone', light: 'night' });
  await page.locator('.kit-found .row-button').nth(1).tap();
  await page
    .getByRole('button', { name: /^put .* at / })
    .first()
    .tap();
  await said(page, 'Put 4-inch colour instrument');
  await keepPicture(page, 'kit-phone-night');
  expect(app.complaints).toEqual([]);
});
