import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, keepPicture, windows } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

const said = (page: Page, words: string): Promise<unknown> =>
  page.waitForFunction((text) => document.querySelector('.edit-says')?.textContent?.includes(text) === true, words);

const onScreen = (page: Page, selector: string): Promise<boolean> =>
  page
    .locator(selector)
    .first()
    .evaluate((element) => {
      const { top, bottom, width } = element.getBoundingClientRect();
      return width > 0 && bottom > 0 && top < window.innerHeight;
    });

test('on a phone, from the list of boats to a reading that is wanted, its gap, a cure and back, by thumb alone', async () => {
  const page = await app.newPage({ window: 'phone', light: 'day' });
  await page.goto(app.address);
  await page.locator('.boats a', { hasText: 'Gannet' }).tap();
  await page.locator('.sheet-svg .balloon').first().waitFor();
  await page.locator('.progress:empty').waitFor({ state: 'attached', timeout: 60_000 });
  await page.locator('.course a', { hasText: 'Needs' }).tap();
  await page.getByRole('button', { name: 'table of needs' }).tap();
  await page.getByRole('button', { name: /more readings/ }).tap();
  const cell = page.locator('[data-cell="humidity /mfd-helm"]');
  await cell.tap();
  await said(page, 'Humidity must be seen.');
  await page.waitForFunction(
    () => document.querySelector('[data-cell="humidity /mfd-helm"]')?.textContent?.includes('×') === true,
  );
  expect(await onScreen(page, '[data-cell="humidity /mfd-helm"]')).toBe(true);
  const cure = page.locator('.needs-detail .cure-link').first();
  const box = await cure.boundingBox();
  expect(box?.height ?? 0).toBeGreaterThanOrEqual(20);
  await cure.tap();
  await page.waitForFunction(
    () => document.querySelector('[data-cell="humidity /mfd-helm"]')?.textContent?.includes('✓') === true,
  );
  await keepPicture(page, 'journey-phone');
  await page.locator('.edit-line').getByRole('button', { name: 'undo' }).tap();
  await said(page, 'Taken back');
  const widthPx = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(widthPx).toBeLessThanOrEqual(windows.phone.width);
  expect(app.complaints).toEqual([]);
});

/** Presses Tab until the focused element says what is looked for, at most so many times. */
const tabTo = async (page: Page, looked: RegExp, atMost = 60): Promise<void> => {
  for (let pressed = 0; pressed < atMost; pressed += 1) {
    await page.keyboard.press('Tab');
    const words = await page.evaluate(() => {
      const at = document.activeElement;
      return `${at?.getAttribute('aria-label') ?? ''} ${at?.textContent ?? ''}`;
    });
    if (looked.test(words)) return;
  }
  throw new Error(`Tab did not come to ${looked} in ${atMost} steps.`);
};

test('from the keyboard alone: open a boat, ask for a reading, take a cure, take it back', async () => {
  const page = await app.newPage({ window: 'laptop', light: 'dusk' });
  await page.goto(app.address);
  await page.locator('.boats a').first().waitFor();
  await tabTo(page, /Gannet/);
  await page.keyboard.press('Enter');
  await page.locator('.sheet-svg .balloon').first().waitFor();
  await page.locator('.progress:empty').waitFor({ state: 'attached', timeout: 60_000 });
  await tabTo(page, /^\s*Needs/, 500);
  await page.keyboard.press('Enter');
  await tabTo(page, /table of needs/, 120);
  await page.keyboard.press('Enter');
  await page.locator('.needs-table').waitFor();
  // the table takes the keyboard; what opens the rest of it stands before its cells
  for (let back = 0; back < 6; back += 1) {
    await page.keyboard.press('Shift+Tab');
    if (await page.evaluate(() => /more readings/.test(document.activeElement?.textContent ?? ''))) break;
  }
  await page.keyboard.press('Enter');
  await tabTo(page, /: (a must|a wish|not wanted)/);
  await page.keyboard.press('End');
  for (let row = 0; row < 60; row += 1) {
    const at = await page.evaluate(() => document.activeElement?.getAttribute('data-cell') ?? '');
    if (at.startsWith('humidity')) break;
    await page.keyboard.press('ArrowDown');
  }
  await page.keyboard.press('Home');
  await page.keyboard.press('m');
  await said(page, 'Humidity must be seen.');
  await page.locator('.needs-detail .cure-link').first().waitFor();
  await tabTo(page, /Fit at/);
  await page.keyboard.press('Enter');
  await said(page, 'Fit at');
  await page.keyboard.press('Control+z');
  await said(page, 'Taken back');
  await page.keyboard.press('Control+z');
  await said(page, 'Taken back: Humidity must be seen.');
  expect(app.complaints).toEqual([]);
});

/** Of a picture of a page: its brightest and darkest light, and how many pixels are not plainly red. */
const lightsOf = async (page: Page, blank: Page): Promise<{ brightest: number; darkest: number; notRed: number }> => {
  const picture = await page.screenshot();
  return await blank.evaluate(async (data) => {
    const image = new Image();
    image.src = `data:image/png;base64,${data}`;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.width;
    canvas.height = image.height;
    const context = canvas.getContext('2d');
    if (context === null) throw new Error('no canvas');
    context.drawImage(image, 0, 0);
    const { data: bytes } = context.getImageData(0, 0, image.width, image.height);
    const linear = (value: number): number => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
    let [brightest, darkest, notRed] = [0, 1, 0];
    for (let at = 0; at < bytes.length; at += 4) {
      const [red, green, blue] = [bytes[at] ?? 0, bytes[at + 1] ?? 0, bytes[at + 2] ?? 0];
      // as every colour of the night has it: red is twice as strong as either of the others, but for rounding
      if (Math.max(green, blue) > red / 2 + 2) notRed += 1;
      const light = 0.2126 * linear(red / 255) + 0.7152 * linear(green / 255) + 0.0722 * linear(blue / 255);
      brightest = Math.max(brightest, light);
      darkest = Math.min(darkest, light);
    }
    return { brightest, darkest, notRed };
  }, picture.toString('base64'));
};

test('at night nothing on the screen is anything but red, nor what the browser draws itself, and nothing outshines the accent', async () => {
  const page = await app.samePage({ window: 'laptop', light: 'night' });
  const blank = await page.context().newPage();
  await page.bringToFront();
  // high enough for fields, ticks and dates that lie below
  await page.setViewportSize({ width: 1440, height: 2400 });
  await page.getByRole('radio').first().waitFor();
  const seen = [await lightsOf(page, blank)];
  for (const step of ['/kit', '/work']) {
    await page.goto(`${app.address}/#/boat/sandpiper${step}`);
    await page.locator('.margin .block').first().waitFor();
    await page.locator('.progress:empty').waitFor({ state: 'attached', timeout: 60_000 });
    for (const fold of await page.locator('.margin details.work-fold').all())
      await fold.evaluate((part) => part.setAttribute('open', ''));
    seen.push(await lightsOf(page, blank));
    await keepPicture(page, `night${step.replace('/', '-')}`);
  }
  await blank.close();
  const accent = await page.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue('--accent'));
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const value = Number.parseInt(accent.trim().slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  const accentLight = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  for (const { notRed, brightest, darkest } of seen) {
    expect(notRed).toBe(0);
    expect(brightest).toBeLessThanOrEqual(accentLight + 0.005);
    // what is written can be read: the contrast of the Web Content Accessibility Guidelines for small text
    expect((brightest + 0.05) / (darkest + 0.05)).toBeGreaterThan(4.5);
  }
}, 120_000);
