import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { findBrowser } from './browser.mjs';
import { type PictureShot, pictureShots } from './picture-shots.ts';
import { serveExamples } from './serve-examples.ts';
import { smallPng } from './small-png.ts';

/**
 * Takes the pictures of README and guide from the real app, so that they never show what is not there. Run after a build;
 * names of pictures take only these.
 */
const folder = fileURLToPath(new URL('../docs/guide/pictures', import.meta.url));
const hintsGone = 'next kit table note sheet pull finder';

/** Opens the page for phones by a code of the laptop, and pairs it. */
const pairedPhone = async (page: Page, address: string): Promise<void> => {
  const headers = { 'content-type': 'application/json', origin: address };
  const asked = await fetch(`${address}/api/phones/code`, { method: 'POST', headers });
  // reason: the server and this script are of one version
  const { addresses, code } = (await asked.json()) as { addresses: readonly string[]; code: { code: string } };
  await page.goto(`${addresses[0]}/#pair=${code.code}`);
  await page.getByLabel(/^Name of this phone/).fill('Kim');
  await page.getByRole('button', { name: 'Pair' }).click();
  await page.getByText('Sandpiper', { exact: true }).first().click();
  await page.locator('.row > .tick').first().waitFor({ timeout: 120_000 });
};

const openedBoat = async (page: Page, { at }: PictureShot, address: string): Promise<void> => {
  await page.goto(at === undefined ? `${address}/#/` : `${address}/#/boat/${at}`);
  if (at === undefined) {
    await page.locator('.boat-row, .hulls').first().waitFor();
    return;
  }
  await page.locator('svg text, .binder-room').first().waitFor({ timeout: 60_000 });
  await page.locator('.margin[aria-busy="false"] .progress:empty').waitFor({ state: 'attached', timeout: 120_000 });
  await page.waitForTimeout(1500);
};

const take = async (browser: Browser, shot: PictureShot, address: string): Promise<void> => {
  const page = await browser.newPage({ viewport: shot.window, reducedMotion: 'reduce' });
  await page.addInitScript(
    ([theme, sheet, gone]) => {
      localStorage.setItem('fairlead-theme', theme ?? '');
      if (sheet !== undefined) localStorage.setItem('fairlead-power-sheet', sheet);
      if (gone !== undefined) localStorage.setItem('fairlead-hints-gone', gone);
    },
    [shot.theme, shot.sheet, shot.hasHints === true ? undefined : hintsGone] as const,
  );
  if (shot.isPhonePage === true) await pairedPhone(page, address);
  else await openedBoat(page, shot, address);
  await shot.does?.(page);
  await page.waitForTimeout(500);
  writeFileSync(`${folder}/${shot.name}.png`, smallPng(await page.screenshot()));
  await page.close();
};

const names = process.argv.slice(2);
const wanted = pictureShots.filter(({ name }) => names.length === 0 || names.includes(name));
const executablePath = findBrowser();
if (executablePath === undefined) throw new Error('No browser was found; set CHROME_PATH.');
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
if (names.length === 0) rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
for (const shot of wanted) {
  // each on boats as they come: what one picture changes is not to be seen on the next
  const { address, stop } = await serveExamples('--lan');
  await take(browser, shot, address);
  stop();
}
await browser.close();
