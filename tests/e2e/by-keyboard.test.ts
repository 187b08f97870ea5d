import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, settled as allPlanned, appUnderTest, keepPicture } from './app-under-test.ts';

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
  const isTyping = (): Promise<boolean> =>
    page.evaluate(() => document.activeElement?.matches('input:not([type="checkbox"]), textarea, select') === true);
  const type = async (text: string): Promise<void> => {
    pressed += 1;
    await page.keyboard.type(text);
  };
  return {
    press,
    type,
    pressed: () => pressed,
    /** steps on with the tab key to what says so */
    tabTo: async (looked: RegExp, most = atMost): Promise<void> => {
      for (let step = 0; step < most && !looked.test(await at()); step += 1) await press('Tab');
      expect(await at()).toMatch(looked);
    },
    /** steps on with the tab key to the first of what is asked for */
    tabInto: async (selector: string): Promise<void> => {
      const isIn = (): Promise<boolean> =>
        page.evaluate((asked) => document.activeElement?.matches(asked) === true, selector);
      for (let step = 0; step < atMost && !(await isIn()); step += 1) await press('Tab');
      expect(await isIn()).toBe(true);
    },
    /** out of a field, in which a stroke is a letter; a date has three stops of its own */
    leaveField: async (): Promise<void> => {
      for (let step = 0; step < 8 && (await isTyping()); step += 1) await press('Tab');
      expect(await isTyping()).toBe(false);
    },
    /** does what is found by typing it, once it is found: what a step can do is there when the step has come */
    find: async (words: string): Promise<void> => {
      await press('/');
      await page.getByRole('combobox', { name: 'Type what you want to do' }).waitFor();
      await type(words);
      await page.locator('.command-finder .here').waitFor();
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

const soon = { timeout: 60_000 };
const planned = (page: Page): Promise<void> => page.locator('.progress:empty').waitFor({ state: 'attached', ...soon });
const says = (page: Page, words: string): Promise<unknown> =>
  page.waitForFunction((text) => document.querySelector('.edit-says')?.textContent?.includes(text) === true, words);

type Hand = ReturnType<typeof keys>;

/** A boat made of a pattern, kit put aboard, and wired. */
const wired = async (page: Page, { press, type, tabTo, leaveField, find }: Hand): Promise<void> => {
  await page.getByRole('radio', { name: 'sloop, mast on deck' }).waitFor();
  await tabTo(/^\s*sloop, mast on deck/);
  await press('Space');
  await page.getByLabel('Name').waitFor();
  await tabTo(/^\s*Name/);
  await press('ControlOrMeta+a');
  await type('Tern');
  await press('Enter');
  await page.waitForURL(/boat\/tern\/boat$/);
  await planned(page);
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
  await planned(page);
  await leaveField();
  await find('wire her so');
  await says(page, 'Wire');
  await planned(page);
};

/** A length taped, a layout and a finding settled, and the price of an hour put into the quote. */
const settled = async (page: Page, { press, type, tabTo, leaveField, find }: Hand): Promise<void> => {
  await find('go to boat');
  await page.waitForURL(/boat$/);
  // the way to the next question is there when the questions are, and what is typed stays where nothing is drawn anew
  await page.locator('.walk-round').waitFor();
  await allPlanned(page);
  await press('Alt+n');
  await page.locator('[data-question]:focus, [data-question]:focus-within').waitFor();
  await tabTo(/Taped length/);
  await type('2.4');
  await press('Enter');
  await says(page, 'taped');
  // the field is gone with what was asked, and the keyboard is still in the notes
  await page.locator('.margin:focus-within, .margin:focus').waitFor();
  await find('go to lines');
  await page.waitForURL(/tern$/);
  await tabTo(/^\s*settle this layout/, 200);
  await press('Enter');
  await says(page, 'stays as it is laid out');
  await planned(page);
  await tabTo(/^accept:/, 200);
  await press('Enter');
  await page.getByLabel('Accepted because').waitFor();
  await type('Known.');
  await press('Enter');
  await says(page, 'Accept ');
  await page.locator('.margin:focus-within, .margin:focus').waitFor();
  await find('go to buy');
  await page.waitForURL(/buy$/);
  // the order comes first and is long; the quote has a way to it of its own
  await find('go to quote');
  await tabTo(/^\s*An hour of work/);
  await press('ControlOrMeta+a');
  await type('90');
  await press('Enter');
  await says(page, '90');
  await leaveField();
};

/** The work begun on a day, a job ticked and another held to the next day, a test written down, the binder saved. */
const doneAndProved = async (page: Page, { press, type, tabTo, tabInto, leaveField, find }: Hand): Promise<void> => {
  await find('go to work');
  await page.waitForURL(/work$/);
  await page.locator('.work-days .balloon').first().waitFor();
  await planned(page);
  await find('go to calendar');
  await tabTo(/^\s*first day/);
  await type('04052027');
  await press('Enter');
  await says(page, 'begins 2027-04-05');
  await leaveField();
  await find('go to jobs');
  await tabTo(/^\s*done: Look at what is aboard/);
  await press('Space');
  await expect.poll(() => page.locator('.waypoint.here').textContent()).toMatch(/1 of \d+ jobs done/);
  // the picture says so too when the rest has been planned anew, and a job that is named stays named
  await page.locator('.work-days .balloon[aria-label$=", done"]').waitFor();
  await find('show all days');
  await tabTo(/^\d+\. .*h, /, 80);
  await press('ArrowRight');
  await press('Shift+ArrowRight');
  await page.getByRole('button', { name: /^undo: Hold / }).waitFor();
  await find('go to prove');
  await page.waitForURL(/prove$/);
  await find('write down a test');
  await page.locator('#prove-tests summary:focus').waitFor();
  await press('Enter');
  await page.locator('.test-group[open] .test-entry').first().waitFor();
  await tabInto('.test-entry input');
  await type('60');
  await press('Enter');
  await expect.poll(() => page.locator('.waypoint.here').textContent()).toMatch(/1 of \d+ tests tried/);
  await leaveField();
  await find('go to binder');
  await page.locator('.binder-leaf:not(.blank)').first().waitFor(soon);
  const saved = page.waitForEvent('download', soon);
  await find('download');
  expect((await saved).suggestedFilename()).toBe('tern-binder.pdf');
};

test('from an empty page to the papers by keys alone, wired in under fifty presses', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  await page.goto(app.address);
  const hand = keys(page);
  await wired(page, hand);
  await keepPicture(page, 'by-keyboard-wired');
  expect(await page.locator('.note.danger, .note.fault').allTextContents()).toEqual([]);
  expect(hand.pressed()).toBeLessThan(50);
  await settled(page, hand);
  await doneAndProved(page, hand);
  await keepPicture(page, 'by-keyboard-binder');
  expect(app.complaints).toEqual([]);
}, 180_000);
