import { readFileSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright-core';
import { scriptsBeforePicture } from '../tests/e2e/scripts-before-picture.ts';
import { findBrowser } from '../tools/browser.mjs';
import { serveExamples } from '../tools/serve-examples.ts';
import { tell } from './figure.ts';

/**
 * From asking for the page to the first picture of Gannet, each run in a browser that never saw it; and the script it takes.
 * The page itself notes the moment, the end of the first frame with a balloon in it: a browser that is asked from outside
 * is asked twice a second only. Run after a build.
 */
const runs = 9;
const limits = { picture: { limit: 1000, stretch: 500 }, script: { limit: 250, stretch: 180 } };

/** So long a new window is left alone before the page is asked for. */
const windowMs = 1500;

/** As text, since it runs in the page before anything else does. */
const watch = `globalThis.pictureMs = new Promise((tell) => {
  new MutationObserver((_, watcher) => {
    if (document.querySelector('.sheet-svg .balloon') === null) return;
    watcher.disconnect();
    requestAnimationFrame(() => setTimeout(() => tell(performance.now())));
  }).observe(document, { childList: true, subtree: true });
})`;

const { address, stop } = await serveExamples();
const executablePath = findBrowser();
if (executablePath === undefined) throw new Error('No browser was found; set CHROME_PATH.');
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
const times: number[] = [];
for (let run = 0; run < runs; run += 1) {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.addInitScript(watch);
  // a window that has just been opened still draws its own bars, and takes both cores for it
  await sleep(windowMs);
  await page.goto(`${address}/#/boat/gannet`);
  times.push(Number(await page.evaluate('globalThis.pictureMs')));
  await context.close();
}
await browser.close();
stop();
times.sort((a, b) => a - b);
const median = times[Math.floor(times.length / 2)] ?? 0;
const assets = new URL('../dist/web/assets/', import.meta.url);

const scripts = scriptsBeforePicture(assets);
const scriptKb = scripts.reduce((sum, name) => sum + gzipSync(readFileSync(new URL(name, assets))).length, 0) / 1000;
const note = `median of ${runs}, from ${times[0]?.toFixed(0)} to ${times.at(-1)?.toFixed(0)} ms`;
tell({
  what: 'from asking for the page to the first picture of Gannet',
  value: median,
  unit: 'ms',
  ...limits.picture,
  note,
});
tell({
  what: 'script before it, worker included, gzip',
  value: scriptKb,
  unit: 'kB',
  ...limits.script,
  note: `${scripts.length} files, with all that they import`,
});
