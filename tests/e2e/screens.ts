import type { Page } from 'playwright-core';
import type { StepId } from '../../src/web/app/route.ts';

/** What stands on the page of a step only once it was opened. Tables and what is folded are found by the page itself. */
interface Screen {
  readonly name: string;
  /** the command that opens it, where there is one */
  readonly command?: string;
  readonly open: (page: Page) => Promise<unknown>;
  /** looked at together with the next one, as both stand on the page at once */
  readonly withNext?: true;
  /** puts it away; absent where it may stay */
  readonly shut?: (page: Page) => Promise<unknown>;
}

const press = (page: Page, name: string | RegExp): Promise<void> =>
  page
    .getByRole('button', { name, exact: typeof name === 'string' })
    .first()
    .click();

const byEscape = (page: Page): Promise<void> => page.keyboard.press('Escape');

/** Opens the card that a picked thing has, and waits for it. */
const picked = async (page: Page, selector: string, card = '.card'): Promise<void> => {
  await page.locator(selector).first().press('Enter');
  await page.locator(card).waitFor();
};

const cardAway = async (page: Page): Promise<void> => {
  await page.locator('.card h2').first().focus();
  await byEscape(page);
};

const ofTheBoat: readonly Screen[] = [
  {
    name: 'a place picked',
    open: async (page) => {
      await page.locator('.boat-list fieldset input').first().check();
      await page.locator('[data-form]').first().waitFor();
    },
    shut: (page) => page.locator('.boat-list fieldset input').first().uncheck(),
  },
  {
    name: 'a way picked',
    withNext: true,
    open: async (page) => {
      await page.locator('.boat-list fieldset').nth(1).locator('input').first().check();
      await page.locator('[data-form]').first().waitFor();
    },
  },
  {
    name: 'earlier states',
    command: 'earlier-states',
    open: async (page) => {
      await press(page, 'earlier states');
      await page.locator('.states').waitFor();
    },
    shut: (page) => press(page, 'earlier states'),
  },
  {
    name: 'the guide beside the boat',
    command: 'guide',
    open: async (page) => {
      await page.locator('.guide-button').click();
      await page.locator('.guide-body h1, .guide-body h2').first().waitFor();
    },
    shut: (page) => page.locator('.guide-close').click(),
  },
];

const ofTheKit: readonly Screen[] = [
  {
    name: 'a note being accepted',
    withNext: true,
    open: async (page) => {
      await press(page, /^accept: /);
      await page.locator('.note').first().getByRole('textbox').waitFor();
    },
  },
  {
    name: 'a unit taken up to be added',
    withNext: true,
    command: 'put-unit-aboard',
    open: async (page) => {
      await page.locator('.kit-found .row-button').nth(1).click();
      await page.locator('.kit-put').first().waitFor();
    },
  },
  {
    name: 'a sheet in its editor',
    open: async (page) => {
      await press(page, /^more that can be done with/);
      await press(page, 'its sheet, from the manual …');
      await page.locator('.sheet-editor').waitFor();
    },
    shut: (page) => press(page, 'leave it as it was'),
  },
];

const ofTheNeeds: readonly Screen[] = [
  {
    name: 'ways to wire her, side by side',
    withNext: true,
    command: 'compare-wirings',
    open: async (page) => {
      await page.locator('.joins-block .press-link').last().click();
      await page.locator('.wirings li').first().waitFor();
    },
  },
  {
    name: 'the card of a reading',
    open: (page) => picked(page, '.margin .row-button:has-text("depth")'),
    shut: cardAway,
  },
];

const ofTheLines: readonly Screen[] = [
  {
    name: 'the card of a unit, its words explained',
    withNext: true,
    open: async (page) => {
      await picked(page, '.sheet-svg .balloon');
      await page.locator('.card .term').first().click();
      await page.locator('.card .meaning').waitFor();
    },
  },
  {
    name: 'routes for a line',
    open: async (page) => {
      await press(page, 'lead it through another place');
      await page.locator('.route-choices button').first().click();
      await page.locator('.led-view').waitFor();
    },
    shut: async (page) => {
      await byEscape(page);
      await cardAway(page);
    },
  },
  {
    name: 'pulled out, to see what goes dark',
    open: async (page) => {
      await page.locator('.blackout-block .row-button').first().press('Enter');
      await page.locator('.pull-card').waitFor();
    },
    shut: byEscape,
  },
  {
    name: 'the drawing as a list',
    withNext: true,
    open: async (page) => {
      await press(page, 'show as a list');
      await page.getByRole('table', { name: 'Everything on the drawing' }).waitFor();
    },
  },
  {
    name: 'what can be done, found by typing',
    command: 'find',
    open: async (page) => {
      await press(page, 'what can be done here');
      await page.getByRole('combobox', { name: 'Type what you want to do' }).fill('go');
      await page.getByRole('option').first().waitFor();
    },
    shut: byEscape,
  },
];

const ofTheFit: readonly Screen[] = [
  {
    name: 'an opening being measured',
    command: 'measure-opening',
    open: async (page) => {
      await press(page, 'measure an opening');
      await page.getByRole('region', { name: 'A new opening' }).waitFor();
      await press(page, 'trace it from a photo');
    },
  },
];

const ofTheWork: readonly Screen[] = [
  {
    name: 'the sheet of a day',
    command: 'show-day-sheet',
    open: async (page) => {
      await press(page, 'day sheet');
      await page.locator('.day-paper').first().waitFor();
    },
  },
];

const ofTheProof: readonly Screen[] = [
  {
    name: 'a test that came out wrong, and its causes',
    open: async (page) => {
      const field = page.locator('#prove-tests .test-entry input').first();
      await field.fill('119');
      await field.press('Enter');
      await page.getByText('What it comes from, likeliest first').waitFor();
    },
  },
];

const ofTheBinder: readonly Screen[] = [
  {
    name: 'the papers, read in the app',
    command: 'make-binder',
    open: (page) => page.locator('.binder-leaf:not(.blank)').first().waitFor({ timeout: 30_000 }),
  },
];

/** Every screen of a step beyond its tables and what is folded in it; a test holds the commands of the app against the list. */
export const screens: Readonly<Partial<Record<StepId, readonly Screen[]>>> = {
  boat: ofTheBoat,
  kit: ofTheKit,
  needs: ofTheNeeds,
  lines: ofTheLines,
  fit: ofTheFit,
  work: ofTheWork,
  prove: ofTheProof,
  binder: ofTheBinder,
};

/** Commands that open no screen: they go to one, change the boat, or show or save what stands. */
export const opensNothing: readonly RegExp[] = [
  /^go-to-/,
  /^light-/,
  /^units-/,
  /^(undo|redo|print|all-boats|hints-again)$/,
  /^next-open-question$/,
  /^picture-/,
  /^boat-tool-/,
  /^(add-place-amidships|join-picked-places|split-picked-way|one-way-of-two|remove-picked)$/,
  /^(pick-every-place|let-go-of-picked)$/,
  /^(wire-her|usual-needs|needs-of-today)$/,
  /^(quote-each-way|save-quote)$/,
  /^(show-days|print-day-sheet)$/,
  /^(write-test|prove-recording|write-note)$/,
  /^(give-labels|give-out-revision|note-difference)$/,
  /^(binder-|save-lists-|stop-binder|download-binder)/,
];
