import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, barriers, keepPicture, openAnother, windows } from './app-under-test.ts';
import { faintWords } from './looked-at.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const focused = (page: Page): Promise<string> => page.evaluate(() => document.activeElement?.textContent ?? '');

const litLines = (page: Page): Promise<string[]> =>
  page
    .locator('.sheet-svg .lit[data-about*=":"]')
    .evaluateAll((all) => all.flatMap((one) => one.getAttribute('data-about')?.split(' ') ?? []));

test('a balloon picked by keyboard opens the card of its unit, and Escape gives the keyboard back', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' });
  await page.locator('.balloon[data-about~="conv-pilot"]').first().focus();
  await page.keyboard.press('Enter');
  const card = page.getByRole('region', { name: /two-way converter/ });
  await card.waitFor();
  expect(await focused(page)).toContain('two-way converter');
  for (const part of ['Rests on', 'Findings', 'Says', 'Hears', 'Draws', 'Plugs', 'Before and after']) {
    expect(await card.getByRole('heading', { name: part }).count(), part).toBe(1);
  }
  const said = await card.textContent();
  expect(said).toContain('PGN 127245');
  expect(said).toContain('check the maker’s sheet');
  expect(said).toMatch(/its tee on Navigation bus/);
  await page.keyboard.press('Escape');
  expect(await page.locator('.card').count()).toBe(0);
  expect(await page.evaluate(() => document.activeElement?.getAttribute('data-about'))).toContain('conv-pilot');
  expect(app.complaints).toEqual([]);
});

test('a unit picked in the list opens its card as well, one that goes ashore among them', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' });
  await page.getByRole('button', { name: 'show as a list' }).click();
  await page.locator('tr', { hasText: 'goes ashore' }).locator('.unit-button').first().click();
  expect(await page.locator('.card').textContent()).toContain('goes ashore');
  expect(app.complaints).toEqual([]);
});

test('a reading picked among the needs shows its way hop by hop and lights it on the drawing', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'night' }, 'gannet/needs');
  expect(await litLines(page)).toEqual([]);
  await page.locator('.margin .row-button', { hasText: 'rudder angle' }).first().press('Enter');
  const card = page.getByRole('region', { name: 'rudder angle' });
  await card.waitFor();
  const stops = await card.locator('.stop-unit').allTextContents();
  expect(stops).toHaveLength(5);
  expect(stops[0]).toContain('rudder');
  expect(await card.textContent()).toContain('turns NMEA 0183 into NMEA 2000');
  const lit = await litLines(page);
  expect(lit).toEqual(
    expect.arrayContaining([
      'analog:pilot-computer.rudder~rudder-ref.lead',
      'drop:conv-pilot.bus~nav',
      'drop:instr-fly.bus~nav',
    ]),
  );
  expect(lit.some((id) => id.startsWith('trunk:nav/'))).toBe(true);
  await card.locator('.stop-unit').nth(1).press('Enter');
  expect(await focused(page)).toContain('pilot computer');
  await page.getByRole('button', { name: 'back', exact: true }).press('Enter');
  expect(await focused(page)).toBe('rudder angle');
  expect(await litLines(page)).toContain('drop:instr-fly.bus~nav');
  expect(app.complaints).toEqual([]);
});

test('a reading that does not arrive says why in its card, with the cures as links', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' }, 'wreck/needs');
  await page.locator('.margin .row-button', { hasText: 'air pressure' }).first().click();
  const gap = page.locator('.card .gap');
  expect(await gap.textContent()).toContain('Nothing aboard sends air pressure');
  expect(await gap.locator('.cure-link').count()).toBeGreaterThan(0);
  expect(app.complaints).toEqual([]);
});

test('a trade word is explained in place by the keyboard, and Escape shuts the explanation only', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' });
  await page.locator('.balloon[data-about~="conv-pilot"]').first().focus();
  await page.keyboard.press('Enter');
  const word = page.locator('.card .term', { hasText: 'LEN' });
  await word.focus();
  expect(await word.getAttribute('aria-expanded')).toBe('false');
  await page.keyboard.press('Enter');
  expect(await word.getAttribute('aria-expanded')).toBe('true');
  const meaning = page.locator(`[id="${await word.getAttribute('aria-controls')}"]`);
  expect(await meaning.textContent()).toContain('1 LEN is 50 mA');
  await page.keyboard.press('Escape');
  expect(await meaning.count()).toBe(0);
  expect(await page.locator('.card').count()).toBe(1);
  expect(app.complaints).toEqual([]);
});

test('the words on the drawing are explained under it, and all words at the end of the margin', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' });
  await page.getByRole('button', { name: 'words on the drawing' }).click();
  const words = await page.getByRole('region', { name: 'Words on the drawing' }).textContent();
  for (const word of ['trunk', 'tee', 'coax', 'converter', 'AIS']) expect(words).toContain(word);
  await page.getByText('All trade words, explained').click();
  expect(await page.locator('.all-words dt').count()).toBeGreaterThan(100);
  expect(app.complaints).toEqual([]);
});

test('on a phone a tapped reading brings its card into the window', async () => {
  const page = await openAnother(app, { window: 'phone', light: 'night' }, 'sandpiper/needs');
  await page.locator('.margin .row-button', { hasText: 'apparent wind' }).first().tap();
  const box = await page.locator('.card h2').boundingBox();
  expect(box?.y).toBeGreaterThanOrEqual(0);
  expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(windows.phone.height - 84);
  expect(app.complaints).toEqual([]);
});

test('the power step draws the feeds and lists them, the buy step lists the order', async () => {
  const page = await openAnother(app, { window: 'laptop', light: 'day' }, 'gannet/power');
  expect(await page.locator('.waypoint.here').textContent()).toMatch(/^Power11 feeds, 10\.\d\d V at the worst plug/);
  expect(await page.locator('.sheet-svg text', { hasText: 'DC feed' }).count()).toBe(1);
  await page.locator('.margin .row-button', { hasText: /24-inch.* at its end/ }).focus();
  expect(await litLines(page)).toContain('feed:main~radar.supply');
  await page.getByRole('link', { name: /^Buy/ }).click();
  await page.getByRole('heading', { name: 'The order' }).waitFor();
  await page.getByRole('heading', { name: /^Other cable, / }).waitFor();
  expect(app.complaints).toEqual([]);
});

/** In the other lights cards are looked at on the walk over all screens. */
const wishes = [
  { window: 'laptop', light: 'night' },
  { window: 'phone', light: 'day' },
] as const;

test.each(wishes)(
  'cards and explanations on a $window by $light have no barrier that axe knows and nothing past the edge',
  async (wish) => {
    const page = await openAnother(app, wish, 'gannet/needs');
    const look = wish.light === 'day' ? barriers : faintWords;
    await page.locator('.margin .row-button', { hasText: 'water temperature' }).first().click();
    await page.locator('.card .term').first().click();
    expect(await page.locator('.card .meaning').count()).toBe(1);
    expect(await look(page)).toEqual([]);
    await keepPicture(page, `reading-card-${wish.window}-${wish.light}`);
    await page.locator('.card .stop-unit').first().click();
    for (const term of await page.locator('.card .term').all()) await term.click();
    expect(await look(page)).toEqual([]);
    const widthPx = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(widthPx).toBeLessThanOrEqual(windows[wish.window].width);
    await keepPicture(page, `unit-card-${wish.window}-${wish.light}`);
    expect(app.complaints).toEqual([]);
  },
);
