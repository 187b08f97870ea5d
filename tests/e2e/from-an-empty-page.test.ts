import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, keepPicture, settled } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest({ demos: false });
});
afterAll(() => app.close());

/** Counts what a person enters: each press of a button and each field that is filled. */
const counted = () => {
  let entries = 0;
  return {
    press: async (what: Locator): Promise<void> => {
      entries += 1;
      await what.click();
    },
    type: async (what: Locator, text: string): Promise<void> => {
      entries += 1;
      await what.fill(text);
    },
    entries: () => entries,
  };
};

/** The twelve things as the list of what most boats get calls them. */
const wanted = [
  /^10-inch multifunction display/,
  /^4-inch colour instrument/,
  /^10 Hz position antenna/,
  /^9-axis heading sensor/,
  /^Through-hull sensor for depth/,
  /^Masthead wind sensor/,
  /^Fixed VHF with DSC/,
  /^1 m whip/,
  /^AIS class B/,
  /^Pilot computer/,
  /^Pilot head/,
  /^Battery monitor/,
];

/** Does something that changes the boat, and waits until the whole plan of her stands. */
const planned = async (page: Page, does: () => Promise<void>): Promise<void> => {
  const before = await page.locator('.edit-says').textContent();
  await does();
  await page.waitForFunction((old) => document.querySelector('.edit-says')?.textContent !== old, before);
  await settled(page);
};

/** Types the taped length of every way that new cable is led through, in the order of the table. */
const tapeAll = async (page: Page, hand: ReturnType<typeof counted>): Promise<void> => {
  const search = page.getByRole('searchbox', { name: 'Find in this table' });
  await hand.type(search, 'guessed');
  const lengths = page.locator('.grid-table tbody tr:not(.new-row) td:nth-child(3)');
  const guessed = await lengths.count();
  for (let left = guessed; left > 0; left -= 1) {
    const cell = lengths.first();
    const text = ((await cell.textContent()) ?? '').replace('\u00a0', ' ');
    await cell.click();
    await page.keyboard.press('Enter');
    await hand.type(page.locator('.grid-table td input'), text.replace(/\d m$/, '1 m'));
    await page.keyboard.press('Enter');
    await page.waitForFunction(
      (now) => document.querySelectorAll('.grid-table tbody tr:not(.new-row)').length === now,
      left - 1,
    );
  }
};

test('an owner goes from an empty page to a sure order for twelve units in under sixty entries', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'day' });
  const hand = counted();
  await page.goto(`${app.address}/`);
  await hand.press(page.getByRole('radio', { name: 'sloop, mast on deck' }));
  await hand.type(page.getByLabel('Name'), 'Tern');
  await hand.type(page.getByLabel('Length'), '31 ft');
  await hand.press(page.getByRole('button', { name: 'Make this boat' }));
  await page.waitForURL(/boat\/tern\/boat$/);
  // the line over the course leads on, from the hull to the first unit …
  const next = page.locator('.next-go');
  await hand.press(next.filter({ hasText: 'Put the first unit aboard' }));
  for (const [at, what] of wanted.entries()) {
    await hand.press(page.locator('.kit-found').getByRole('button', { name: what }));
    await hand.press(page.locator('.kit-put').first());
    await page
      .locator('.course')
      .getByText(`${at + 1} come`)
      .waitFor();
  }
  await settled(page);
  // … from the units to the wires …
  await next.filter({ hasText: 'wire her so' }).waitFor();
  const wire = page.getByRole('button', { name: /wire her so/ });
  await planned(page, () => hand.press(wire));
  // what still cannot arrive has a cure to press
  const cure = page.locator('.note.fault .cure-link').first();
  while ((await cure.count()) > 0) {
    await planned(page, () => hand.press(cure));
  }
  expect(await page.locator('.note.danger, .note.fault').allTextContents()).toEqual([]);
  // … and, once her first plan stands, to the tape
  await next.filter({ hasText: /tape or prove \d+ things before you order/ }).waitFor();
  expect(await page.locator('.first-plan').count()).toBe(0);
  await page.locator('.plan-stands').getByRole('link', { name: 'read the order' }).waitFor();
  await keepPicture(page, 'from-empty-kit');

  await hand.press(page.locator('.course').getByText('Boat', { exact: true }));
  await hand.press(page.getByRole('button', { name: 'places and ways' }));
  await hand.press(page.locator('.grid-head').getByText('ways'));
  await tapeAll(page, hand);
  await hand.press(page.locator('.course').getByText('Buy'));
  const todo = page.locator('.block', { hasText: 'To tape or to prove first' });
  await todo.waitFor();
  await keepPicture(page, 'from-empty-buy');
  expect(await todo.textContent()).not.toContain('Tape the way');
  expect(await page.locator('.course').textContent()).toMatch(/Buy\d+ cables, no length guessed/);
  expect(hand.entries()).toBeLessThan(60);
  expect(app.complaints).toEqual([]);
});
