import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium, type Page } from 'playwright-core';
import { findBrowser } from './browser.mjs';
import { serveExamples } from './serve-examples.ts';

/** Takes the pictures of README and guide from the real app, so that they never show what is not there. Run after a build. */
const root = fileURLToPath(new URL('..', import.meta.url));
const folder = `${root}docs/guide/pictures`;
interface Shot {
  readonly name: string;
  readonly theme: 'day' | 'dusk' | 'night';
  readonly width: number;
  readonly height: number;
  readonly step?: string;
  /** what the sheet shows at the power step, where not the boat */
  readonly sheet?: 'one line';
  /** words on a row of the margin that is pressed before the picture is taken */
  readonly press?: string;
  /** a part of the page that is brought into sight before */
  readonly show?: string;
  /** what a person does before */
  readonly does?: (page: Page) => Promise<void>;
}

/** Writes down two ohms of a bus that lacks something. */
const measured = async (page: Page): Promise<void> => {
  await page.locator('#prove-tests summary', { hasText: 'Bus:' }).first().click();
  for (const [at, ohm] of ['118', '119'].entries()) {
    const field = page.locator('#prove-tests .test-entry input:not(.test-causes *)').nth(2 * at);
    await field.fill(ohm);
    await field.press('Enter');
  }
  await page.locator('.test-causes').evaluate((causes) => causes.scrollIntoView({ block: 'start' }));
};

const recorded = async (page: Page): Promise<void> => {
  const recording = `${root}examples/gannet/gannet-at-the-dock.candump.log`;
  await page.locator('#prove-recording input[type="file"]').setInputFiles(recording);
  await page
    .locator('#prove-recording')
    .getByText(/units found/)
    .waitFor();
  await page.locator('#prove-recording').evaluate((part) => part.scrollIntoView({ block: 'start' }));
};

/** Goes to a day in the middle of the work, once the order stands. */
const midway = async (page: Page): Promise<void> => {
  await page.locator('.work-glance').waitFor();
  await page.waitForTimeout(6000);
  const line = await page.locator('.work-glance').boundingBox();
  if (line !== null) await page.mouse.click(line.x + line.width * 0.55, line.y + line.height / 2);
  await page.mouse.move(20, 20);
};
const shots: readonly Shot[] = [
  { name: 'gannet-day', theme: 'day', width: 1440, height: 900 },
  { name: 'gannet-rudder', theme: 'day', width: 1440, height: 900, step: 'needs', press: 'rudder angle' },
  { name: 'gannet-lines', theme: 'day', width: 1440, height: 900, step: 'lines', show: '.price-table' },
  { name: 'gannet-volts', theme: 'day', width: 1440, height: 900, step: 'power', show: '.cautions' },
  {
    name: 'gannet-power',
    theme: 'day',
    width: 1440,
    height: 900,
    step: 'power',
    sheet: 'one line',
    show: '.why[open]',
  },
  { name: 'gannet-fit', theme: 'day', width: 1440, height: 900, step: 'fit' },
  { name: 'gannet-work', theme: 'day', width: 1440, height: 900, step: 'work', does: midway },
  { name: 'gannet-tests', theme: 'day', width: 1440, height: 900, step: 'prove', does: measured },
  { name: 'gannet-recording', theme: 'day', width: 1440, height: 900, step: 'prove', does: recorded },
  { name: 'gannet-night', theme: 'night', width: 1440, height: 900 },
  { name: 'gannet-phone', theme: 'day', width: 390, height: 844 },
];

const { address, stop } = await serveExamples();
const executablePath = findBrowser();
if (executablePath === undefined) throw new Error('No browser was found; set CHROME_PATH.');
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
mkdirSync(folder, { recursive: true });
for (const { name, theme, width, height, step, sheet, press, show, does } of shots) {
  const page = await browser.newPage({ viewport: { width, height } });
  await page.addInitScript((chosen) => localStorage.setItem('fairlead-theme', chosen), theme);
  if (sheet !== undefined)
    await page.addInitScript((kept) => localStorage.setItem('fairlead-power-sheet', kept), sheet);
  await page.goto(`${address}/#/boat/gannet${step === undefined ? '' : `/${step}`}`);
  await page.locator('svg text').first().waitFor();
  await page.waitForTimeout(1500);
  if (press !== undefined) {
    await page.locator('.margin .row-button', { hasText: press }).first().click();
    await page.mouse.move(width / 2, 20);
  }
  if (sheet !== undefined) await page.locator('.why summary').nth(1).click();
  if (show !== undefined) await page.locator(show).first().scrollIntoViewIfNeeded();
  if (does !== undefined) await does(page);
  await page.screenshot({ path: `${folder}/${name}.png` });
  await page.close();
}
await browser.close();
stop();
