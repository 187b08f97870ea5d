import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, keepPicture, openAnother } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const openLines = async (window: 'laptop' | 'phone', light: 'day' | 'night'): Promise<Page> => {
  const page = await openAnother(app, { window, light }, 'gannet/needs');
  const choice = page.getByRole('group', { name: 'What the sheet shows' }).getByText('lines of data');
  await choice.focus();
  await page.keyboard.press('Enter');
  await page.locator('.sheet-svg[aria-label^="Lines of data of Gannet"]').waitFor();
  return page;
};

test.each([
  ['laptop', 'day'],
  ['laptop', 'night'],
  ['phone', 'day'],
  ['phone', 'night'],
] as const)('on a %s by %s the lines of data are drawn', async (window, light) => {
  const page = await openLines(window, light);
  const drawing = await page.locator('.sheet-svg').textContent();
  for (const words of ['Navigation bus', 'Ethernet', 'converter 0183/2000', 'network switch', 'With no line of data']) {
    expect(drawing).toContain(words);
  }
  await keepPicture(page, `lines-of-data-${window}-${light}`);
  expect(app.complaints).toEqual([]);
});

test('a reading picked in the margin lights its way through the lanes, and the boat comes back on demand', async () => {
  const page = await openLines('laptop', 'day');
  await page.locator('.margin .row-button', { hasText: 'rudder angle' }).first().click();
  const lit = await page
    .locator('.sheet-svg .lit[data-about*="~"]')
    .evaluateAll((all) => all.map((one) => one.getAttribute('data-about') ?? ''));
  for (const line of ['analog:pilot-computer.rudder~rudder-ref.lead', 'pair:conv-pilot.data~pilot-computer.data']) {
    expect(lit.join(' ')).toContain(line);
  }
  expect(lit.join(' ')).not.toContain('ethernet:');
  await page.getByRole('group', { name: 'What the sheet shows' }).getByText('boat').click();
  await page.locator('.sheet-svg[aria-label^="Drawing of Gannet"]').waitFor();
});
