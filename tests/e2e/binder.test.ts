import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, keepPicture, openAnother, type PageWish } from './app-under-test.ts';
import { pastEdgePx, smallTargets, toldByColourAlone, unseenFocus } from './looked-at.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const line = (page: Page) => page.locator('.binder-line');

/** Waits until the papers stand, and says how many pages they are. */
const pagesOn = async (page: Page, paper: string): Promise<number> => {
  const says = line(page).getByText(new RegExp(`^\\d+ pages on ${paper}`));
  await says.waitFor({ timeout: 30_000 });
  return Number.parseInt((await says.textContent()) ?? '', 10);
};

const pageOf = (page: Page, number: number) => page.locator(`.binder-leaf[data-page="${number - 1}"]`);

const atBinder = async (wish: PageWish): Promise<Page> => {
  const page = await openAnother(app, wish);
  await page.locator('.waypoint', { hasText: 'Binder' }).locator('a').click();
  return page;
};

test('the binder is read in the app, set for other paper, downloaded page for page, and follows what came out otherwise', async () => {
  const page = await atBinder({ window: 'laptop', light: 'day' });
  const onA4 = await pagesOn(page, 'A4');
  await pageOf(page, 2).getByText('Contents', { exact: true }).first().waitFor();
  expect(await page.locator('.binder-leaf').count()).toBe(onA4);
  expect(await page.locator('.binder-leaf:not(.blank)').count()).toBeLessThan(12);
  const contents = page.getByRole('navigation', { name: 'Contents of the binder' });
  // an entry of the contents on paper leads there by the hand, the contents beside by the keyboard too
  await pageOf(page, 2).locator('.binder-link').nth(2).click();
  expect(await page.locator('.binder-leaf:focus').getAttribute('data-page')).not.toBeNull();
  await contents.getByRole('button', { name: /^Cable list/ }).click();
  await page.locator('.binder-leaf:focus').getByText('Cable schedule', { exact: true }).first().waitFor();
  await page.getByRole('button', { name: 'US Letter' }).click();
  const onLetter = await pagesOn(page, 'US Letter');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'download PDF' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('gannet-binder.pdf');
  const kept = join(mkdtempSync(join(tmpdir(), 'fairlead-binder-')), 'binder.pdf');
  await download.saveAs(kept);
  const bytes = readFileSync(kept);
  rmSync(dirname(kept), { recursive: true });
  expect(bytes.subarray(0, 8).toString('latin1')).toBe('%PDF-1.7');
  expect(bytes.toString('latin1').match(/\/Type \/Page\b/g)).toHaveLength(onLetter);

  // labels and the quote are papers by themselves
  const which = page.getByLabel('Which papers');
  await which.selectOption({ label: 'labels: tape, 12 mm' });
  await page.locator('.binder-leaf').getByText('C01', { exact: true }).first().waitFor({ timeout: 30_000 });
  await which.selectOption({ label: 'binder' });
  await contents.getByRole('button', { name: /^Cable list/ }).waitFor({ timeout: 30_000 });

  await page.locator('summary', { hasText: 'what came out otherwise?' }).click();
  const form = page.locator('.binder-form', { hasText: 'What differs' });
  await form.getByLabel('What differs').selectOption('fuse');
  await form.getByLabel('It has').fill('2 A');
  await form.getByLabel('By', { exact: true }).fill('the yard');
  await page.getByRole('button', { name: 'note it' }).click();
  await page.locator('.binder-noted li', { hasText: 'is 2 A' }).waitFor();
  await line(page).getByText('as fitted').waitFor({ timeout: 30_000 });
  await contents.getByRole('button', { name: /^Change log/ }).click();
  await page
    .locator('.binder-leaf:focus')
    .getByText(/is 2 A/)
    .first()
    .waitFor();
  await keepPicture(page, 'binder-laptop-day');
  expect([...(await unseenFocus(page)), ...(await toldByColourAlone(page))]).toEqual([]);
  await page.getByRole('button', { name: /^undo: / }).click();
  await line(page).getByText('as planned').waitFor({ timeout: 30_000 });
  expect(await page.locator('.binder-noted li').count()).toBe(0);
  expect(app.complaints).toEqual([]);
});

test('a making is called off, a revision is given out and read, on a phone at night', async () => {
  const page = await atBinder({ window: 'phone', light: 'night' });
  await line(page).getByRole('button', { name: 'stop' }).click();
  await line(page).getByText('Called off').waitFor();
  expect(await page.locator('.binder-leaf').count()).toBe(0);
  await line(page).getByRole('button', { name: 'make the binder' }).click();
  await pagesOn(page, 'A4');
  await page.locator('summary', { hasText: 'give out revision A' }).click();
  await page.getByLabel('What for').fill('For the yard.');
  await page.getByLabel('Day', { exact: true }).first().fill('2027-03-01');
  await page.getByRole('button', { name: 'give out A, as planned' }).click();
  await page.locator('.waypoint.here', { hasText: 'A given out 2027-03-01' }).waitFor();
  await page.getByRole('button', { name: 'read it revision A' }).click();
  await line(page)
    .getByText(/^Revision A of 2027-03-01, as planned: \d+ pages/)
    .waitFor({ timeout: 30_000 });
  await pageOf(page, 1)
    .getByText(/2027-03-01/)
    .waitFor();
  await keepPicture(page, 'binder-phone-night');
  expect(await pastEdgePx(page)).toBe(0);
  expect(await smallTargets(page)).toEqual([]);
  expect(app.complaints).toEqual([]);
});
