import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
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
}
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
  { name: 'gannet-night', theme: 'night', width: 1440, height: 900 },
  { name: 'gannet-phone', theme: 'day', width: 390, height: 844 },
];

const { address, stop } = await serveExamples();
const executablePath = findBrowser();
if (executablePath === undefined) throw new Error('No browser was found; set CHROME_PATH.');
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
mkdirSync(folder, { recursive: true });
for (const { name, theme, width, height, step, sheet, press, show } of shots) {
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
  await page.screenshot({ path: `${folder}/${name}.png` });
  await page.close();
}
await browser.close();
stop();
