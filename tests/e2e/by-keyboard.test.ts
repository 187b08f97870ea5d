import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, keepPicture } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest({ demos: false });
});
afterAll(() => app.close());

/** So many keys are pressed at most between one thing that is done and the next, besides what is typed. */
const atMost = 40;

/** A hand that has keys only, and counts them; a word that is typed counts once. */
const keys = (page: Page) => {
  let pressed = 0;
  const press = async (key: string): Promise<void> => {
    pressed += 1;
    await page.keyboard.press(key);
  };
  const at = (): Promise<string> =>
    page.evaluate(() => {
      const one = document.activeElement;
      const label = one instanceof HTMLInputElement ? (one.labels?.[0]?.textContent ?? '') : '';
      return `${one?.getAttribute('aria-label') ?? ''} ${label} ${one?.textContent ?? ''}`;
    });
  const type = async (text: string): Promise<void> => {
    pressed += 1;
    await page.keyboard.type(text);
  };
  return {
    press,
    type,
    pressed: () => pressed,
    /** steps on with the tab key to what says so */
    tabTo: async (looked: RegExp): Promise<void> => {
      for (let step = 0; step < atMost && !looked.test(await at()); step += 1) await press('Tab');
      expect(await at()).toMatch(looked);
    },
    /** does what is found by typing it */
    find: async (words: string): Promise<void> => {
      await press('/');
      await page.getByRole('combobox', { name: 'Type what you want to do' }).waitFor();
      await type(words);
      await press('Enter');
    },
  };
};

const wanted = [
  '10-inch multifunction display',
  '10 Hz position antenna',
  'masthead wind sensor',
  'through-hull depth',
];

test('from an empty page to a wired boat by keys alone, in under fifty presses', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  await page.goto(app.address);
  const { press, type, tabTo, find, pressed } = keys(page);
  await page.getByRole('radio', { name: 'sloop, mast on deck' }).waitFor();
  await tabTo(/^\s*sloop, mast on deck/);
  await press('Space');
  await page.getByLabel('Name').waitFor();
  await tabTo(/^\s*Name/);
  await press('ControlOrMeta+a');
  await type('Tern');
  await press('Enter');
  await page.waitForURL(/boat\/tern\/boat$/);
  await page.locator('.progress:empty').waitFor({ state: 'attached', timeout: 60_000 });
  await find('go kit');
  await page.waitForURL(/kit$/);
  await page.getByRole('searchbox').waitFor();
  await find('put a unit');
  for (const [done, unit] of wanted.entries()) {
    await page.locator('input[type=search]:focus').waitFor();
    await type(unit);
    await press('Enter');
    await page.locator('.kit-put:focus').waitFor();
    await press('Enter');
    await page
      .locator('.course')
      .getByText(`${done + 1} come`)
      .waitFor();
  }
  await page.locator('.progress:empty').waitFor({ state: 'attached', timeout: 60_000 });
  // out of the field, in which a stroke is a letter
  await press('Tab');
  await find('wire her so');
  await page.waitForFunction(() => document.querySelector('.edit-says')?.textContent?.includes('Wire') === true);
  await page.locator('.progress:empty').waitFor({ state: 'attached', timeout: 60_000 });
  await keepPicture(page, 'by-keyboard-wired');
  expect(await page.locator('.note.danger, .note.fault').allTextContents()).toEqual([]);
  expect(pressed()).toBeLessThan(50);
  expect(app.complaints).toEqual([]);
});
