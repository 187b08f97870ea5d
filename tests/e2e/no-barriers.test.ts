import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import {
  type AppUnderTest,
  appUnderTest,
  barriers,
  contrasts,
  keepPicture,
  openBoat,
  type PageWish,
} from './app-under-test.ts';
import { faintWords, pastEdgePx, pastFootPx, smallTargets, toldByColourAlone, unseenFocus } from './looked-at.ts';

let app: AppUnderTest;
let empty: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
  empty = await appUnderTest({ demos: false });
});
afterAll(async () => {
  await app.close();
  await empty.close();
});

/** Screens with what was found amiss on them. */
type Found = Record<string, readonly string[]>;

/**
 * Looks at one screen after another; by day at everything, in the other lights at what the light changes. What overlaps is looked
 * at where a step stands, as its tables and forms lie in the same page: that look alone takes seconds.
 */
const looker = (page: Page, { window, light }: PageWish, { partsScroll = true } = {}) => {
  const found: Found = {};
  return {
    found,
    look: async (screen: string, { overlaps = true } = {}): Promise<void> => {
      const edgePx = await pastEdgePx(page);
      const footPx = window === 'laptop' && partsScroll ? await pastFootPx(page) : 0;
      const amiss =
        light === 'day'
          ? [
              ...(await barriers(page)),
              ...(window === 'phone'
                ? await smallTargets(page)
                : [...(overlaps ? await contrasts(page) : []), ...(await unseenFocus(page))]),
              ...(await toldByColourAlone(page)),
              ...(edgePx > 0 ? [`${edgePx} px past the edge`] : []),
              ...(footPx > 0 ? [`${footPx} px past the foot`] : []),
            ]
          : await faintWords(page);
      if (amiss.length > 0) found[screen] = amiss;
    },
  };
};

const wishes: readonly PageWish[] = [
  { window: 'laptop', light: 'day' },
  { window: 'phone', light: 'day' },
  { window: 'laptop', light: 'night' },
  { window: 'phone', light: 'dusk' },
];

test.each(wishes)(
  'no step or table of a boat has a barrier on a $window by $light',
  async (wish) => {
    const page = await app.newPage(wish);
    const { look, found } = looker(page, wish);
    await openBoat(app, page, 'sandpiper');
    for (const step of await page.locator('.course a').all()) {
      const name = (await step.locator('.waypoint-name').textContent()) ?? '';
      await step.click();
      await page.locator('.waypoint.here', { hasText: name }).waitFor();
      await page.locator('.margin .block').first().waitFor();
      await look(name);
      // the tables are alike, so their colours are looked at once
      const tables = page.locator('.table-switch');
      const count = wish.light === 'day' || name === 'Kit' ? await tables.count() : 0;
      for (let at = 0; at < count; at += 1) {
        await tables.nth(at).click();
        await page.locator('.table-switch[aria-expanded="true"]').waitFor();
        await look(`${name}: ${await tables.nth(at).textContent()}`, { overlaps: false });
        await tables.nth(at).click();
      }
    }
    await keepPicture(page, `last-step-${wish.window}-${wish.light}`);
    expect(found).toEqual({});
    expect(app.complaints).toEqual([]);
  },
  // sixteen screens, each looked at in full
  180_000,
);

/** Opens what is open only while somebody works in it, one after the other, all at the step Kit. */
const forms: readonly (readonly [string, (page: Page) => Promise<void>])[] = [
  [
    'a note being accepted',
    async (page) => {
      await page
        .locator('.note')
        .first()
        .getByRole('button', { name: /^accept: / })
        .click();
      await page.locator('.note').first().getByRole('textbox').waitFor();
    },
  ],
  [
    'a unit taken up to be added',
    async (page) => {
      await page.locator('.kit-found .row-button').nth(1).click();
      await page.locator('.kit-put').first().waitFor();
    },
  ],
  [
    'a sheet in its editor',
    async (page) => {
      await page
        .getByRole('button', { name: /^more that can be done with/ })
        .first()
        .click();
      await page.getByRole('button', { name: 'its sheet, from the manual …' }).click();
      await page.locator('.sheet-editor').waitFor();
      await page.evaluate(() => {
        for (const part of document.querySelectorAll<HTMLDetailsElement>('.sheet-editor details')) part.open = true;
      });
    },
  ],
  [
    'earlier states',
    async (page) => {
      // all parts of a sheet are so much that each look after it would take seconds
      await page.getByRole('button', { name: 'leave it as it was' }).click();
      await page.getByRole('button', { name: 'earlier states' }).click();
      await page.locator('.states').waitFor();
    },
  ],
  [
    'what can be done, found by typing',
    async (page) => {
      await page.getByRole('button', { name: 'what can be done here' }).click();
      await page.getByRole('combobox', { name: 'Type what you want to do' }).fill('go');
      await page.getByRole('option').first().waitFor();
    },
  ],
  [
    'the drawing as a list',
    async (page) => {
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: 'show as a list' }).click();
      await page.getByRole('table', { name: 'Everything on the drawing' }).waitFor();
    },
  ],
];

test.each([wishes[0], wishes[3]])('no open form has a barrier on a $window by $light', async (wish) => {
  if (wish === undefined) throw new Error('no such light');
  const page = await app.newPage(wish);
  const { look, found } = looker(page, wish);
  await openBoat(app, page, 'sandpiper/kit');
  await page.locator('.kit-found .row-button').first().waitFor();
  for (const [form, open] of forms) {
    await open(page);
    await look(form, { overlaps: form.startsWith('what can be done') });
  }
  await keepPicture(page, `forms-${wish.window}-${wish.light}`);
  expect(found).toEqual({});
  expect(app.complaints).toEqual([]);
});

test.each(wishes)('the first page has no barrier on a $window by $light, nor has the list of boats', async (wish) => {
  const page = await empty.newPage(wish);
  const { look, found } = looker(page, wish, { partsScroll: false });
  await page.goto(empty.address);
  await page.getByRole('radio', { name: 'ketch' }).check();
  await page.getByLabel('Name').fill('Tern');
  await page.getByLabel('Length').fill('31 ft');
  await page.getByLabel('Beam').fill('wide');
  await page.getByText('Write a length, for example').waitFor();
  await look('a new boat');
  await page.goto(app.address);
  await page.locator('.boats a').first().waitFor();
  await look('the boats');
  expect(found).toEqual({});
  expect(empty.complaints).toEqual([]);
});

test('a word is told to be faint by its ratio to what it stands on, and no other is', async () => {
  const page = await empty.newPage({ window: 'laptop', light: 'day' });
  await page.setContent(`<body style="background: #fff">
    <p style="color: #777">just too faint</p>
    <p style="color: #767676">just enough</p>
    <div style="background: #222"><p style="color: #767676">faint on dark</p></div>
    <div style="opacity: 0.5"><p style="color: #333">faint by what it lies in</p></div>
    <h1 style="color: #949494; font-size: 24px">large letters</h1>
    <button disabled style="color: #ccc">cannot be pressed</button></body>`);
  const told = await faintWords(page);
  expect(told.map((one) => /“(.*)”/.exec(one)?.[1])).toEqual([
    'just too faint',
    'faint on dark',
    'faint by what it lies in',
  ]);
  // the published pair: #777 on white is 4.48, #767676 is 4.54 (WCAG 2.2, 1.4.3)
  expect(told[0]).toContain('4.48');
  expect(await contrasts(page)).toHaveLength(told.length);
});
