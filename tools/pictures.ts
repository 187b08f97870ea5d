import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { findBrowser } from './browser.mjs';
import { serveExamples } from './serve-examples.ts';

/** Takes the pictures of README and guide from the real app, so that they never show what is not there. Run after a build. */
const root = fileURLToPath(new URL('..', import.meta.url));
const folder = `${root}docs/guide/pictures`;
const shots = [
  { name: 'gannet-day', theme: 'day', width: 1440, height: 900 },
  { name: 'gannet-night', theme: 'night', width: 1440, height: 900 },
  { name: 'gannet-phone', theme: 'day', width: 390, height: 844 },
] as const;

const { address, stop } = await serveExamples();
const executablePath = findBrowser();
if (executablePath === undefined) throw new Error('No browser was found; set CHROME_PATH.');
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
mkdirSync(folder, { recursive: true });
for (const { name, theme, width, height } of shots) {
  const page = await browser.newPage({ viewport: { width, height } });
  await page.addInitScript((chosen) => localStorage.setItem('fairlead-theme', chosen), theme);
  await page.goto(`${address}/#/boat/gannet`);
  await page.locator('svg text').first().waitFor();
  await page.waitForTimeout(1500);
  await page.screenshot({ path: `${folder}/${name}.png` });
  await page.close();
}
await browser.close();
stop();
