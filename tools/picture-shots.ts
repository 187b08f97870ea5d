import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';

const root = fileURLToPath(new URL('..', import.meta.url));
const laptop = { width: 1440, height: 900 } as const;
/** Small enough for a page of the guide, large enough that every word can be read on it. */
const small = { width: 1180, height: 740 } as const;
const phone = { width: 390, height: 844 } as const;

/** One picture of README or guide: where in the app, in which light and window, and what a person does before it is taken. */
export interface PictureShot {
  readonly name: string;
  readonly theme: 'day' | 'night';
  readonly window: { readonly width: number; readonly height: number };
  /** boat and step, as an address has them; absent: the first page */
  readonly at?: string;
  /** the page for phones, paired by the script, in place of the app */
  readonly isPhonePage?: true;
  /** what the sheet shows at the power step, where not the boat */
  readonly sheet?: 'one line';
  /** the hints of a newcomer are given; else they were put away */
  readonly hasHints?: true;
  /** what a person does before */
  readonly does?: (page: Page) => Promise<void>;
}

const show =
  (part: string) =>
  (page: Page): Promise<void> =>
    page.locator(part).first().scrollIntoViewIfNeeded();

/** Brings a part of the margin to its top, and nothing else with it. */
const top =
  (part: string) =>
  (page: Page): Promise<void> =>
    page
      .locator(part)
      .first()
      .evaluate((found) => found.scrollIntoView({ block: 'start' }));

const pressRow =
  (words: string) =>
  async (page: Page): Promise<void> => {
    await page.locator('.margin .row-button', { hasText: words }).first().click();
    await page.mouse.move(laptop.width / 2, 20);
  };

/** Writes down two ohms of a bus that lacks something. */
const measured = async (page: Page): Promise<void> => {
  await page.locator('#prove-tests summary', { hasText: 'Bus:' }).first().click();
  for (const [at, ohm] of ['118', '119'].entries()) {
    const field = page.locator('#prove-tests .test-entry input:not(.test-causes *)').nth(2 * at);
    await field.fill(ohm);
    await field.press('Enter');
  }
  await top('.test-causes')(page);
};

const recorded = async (page: Page): Promise<void> => {
  const recording = `${root}examples/gannet/gannet-at-the-dock.candump.log`;
  await page.locator('#prove-recording input[type="file"]').setInputFiles(recording);
  await page
    .locator('#prove-recording')
    .getByText(/units found/)
    .waitFor();
  await top('#prove-recording')(page);
};

/** Goes to a day in the middle of the work, once the order stands. */
const midway = async (page: Page): Promise<void> => {
  await page.locator('.work-glance').waitFor();
  await page.waitForTimeout(6000);
  const line = await page.locator('.work-glance').boundingBox();
  if (line !== null) await page.mouse.click(line.x + line.width * 0.55, line.y + line.height / 2);
  await page.mouse.move(20, 20);
};

const onOneLine = async (page: Page): Promise<void> => {
  await page.locator('.why summary').nth(1).click();
  await show('.why[open]')(page);
};

/** Chooses a hull on the first page and types what an owner knows of her. */
const chosenHull = async (page: Page): Promise<void> => {
  await page.getByLabel('sloop, mast on the keel').check({ force: true });
  await page.getByLabel('Name').fill('Tern');
  await page.getByLabel('Length').fill('11 m');
  await page.locator('.new-measures').evaluate((found) => found.scrollIntoView({ block: 'center' }));
};

/** Makes that boat and goes where the line over the course leads. */
const begun = async (page: Page): Promise<void> => {
  await chosenHull(page);
  await page.getByRole('button', { name: 'Make this boat' }).click();
  await page.waitForURL(/boat\/tern/);
  await page.locator('.next-go').click();
  await page.locator('.kit-search').waitFor();
  await page.locator('.margin').evaluate((margin) => margin.scrollTo(0, 0));
};

const picked = async (page: Page): Promise<void> => {
  await page.locator('.kit-search input').fill('wind sensor');
  await page.locator('.kit-found').first().getByRole('button').first().click();
  await page.locator('.kit-put').first().waitFor();
  await page.locator('.margin').evaluate((margin) => margin.scrollTo(0, 0));
};

const tableOfNeeds = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'table of needs' }).click();
  await page.mouse.move(20, 20);
};

const wholePages = async (page: Page): Promise<void> => {
  await page.locator('.binder-leaf, .binder-page').nth(1).waitFor({ timeout: 180_000 });
  await page.getByText(/pages on A4, as planned/).waitFor({ timeout: 180_000 });
  await page.waitForTimeout(1500);
};

/** Every picture that README and guide show. */
export const pictureShots: readonly PictureShot[] = [
  { name: 'first-page', theme: 'day', window: small, does: chosenHull },
  { name: 'first-plan', theme: 'day', window: small, hasHints: true, does: begun },
  { name: 'step-boat', theme: 'day', window: small, at: 'sandpiper/boat' },
  { name: 'step-kit', theme: 'day', window: small, at: 'sandpiper/kit', does: picked },
  { name: 'step-needs', theme: 'day', window: small, at: 'sandpiper/needs', does: tableOfNeeds },
  { name: 'step-buy', theme: 'day', window: small, at: 'sandpiper/buy', does: top('#buy-tape') },
  { name: 'step-binder', theme: 'day', window: small, at: 'sandpiper/binder', does: wholePages },
  { name: 'step-work-phone', theme: 'day', window: phone, at: 'sandpiper', isPhonePage: true },
  { name: 'gannet-day', theme: 'day', window: laptop, at: 'gannet/lines' },
  { name: 'gannet-rudder', theme: 'day', window: laptop, at: 'gannet/needs', does: pressRow('rudder angle') },
  { name: 'gannet-lines', theme: 'day', window: laptop, at: 'gannet/lines', does: show('.price-table') },
  { name: 'gannet-volts', theme: 'day', window: laptop, at: 'gannet/power', does: show('.cautions') },
  { name: 'gannet-power', theme: 'day', window: laptop, at: 'gannet/power', sheet: 'one line', does: onOneLine },
  { name: 'gannet-fit', theme: 'day', window: laptop, at: 'gannet/fit' },
  { name: 'gannet-work', theme: 'day', window: laptop, at: 'gannet/work', does: midway },
  { name: 'gannet-tests', theme: 'day', window: laptop, at: 'gannet/prove', does: measured },
  { name: 'gannet-recording', theme: 'day', window: laptop, at: 'gannet/prove', does: recorded },
  { name: 'gannet-night', theme: 'night', window: laptop, at: 'gannet/lines' },
  { name: 'gannet-phone', theme: 'day', window: phone, at: 'gannet/lines' },
];
