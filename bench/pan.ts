import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { chromium, type Page } from 'playwright-core';
import { findBrowser } from '../tools/browser.mjs';
import { serveBoats } from '../tools/serve-examples.ts';
import { largeBoat } from './large-boat.ts';

/** Frames while a hand drags the sheet of a made-up boat of 500 devices, beside the 16.7 ms of a screen. Run after a build. */
const devices = 500;
const limitMs = 1000 / 60;
const strokes = 6;
const stepsAStroke = 60;

/** Written as text, because what runs in the page must not lean on helpers of this side. */
const counting = `
  globalThis.frameTimes = [];
  let last;
  const tick = (now) => {
    if (last !== undefined) globalThis.frameTimes.push(now - last);
    last = now;
    requestAnimationFrame(tick);
  };
  requestAnimationFrame(tick);
`;

const drag = async (page: Page): Promise<void> => {
  for (let stroke = 0; stroke < strokes; stroke += 1) {
    const [fromX, toX] = stroke % 2 === 0 ? [900, 350] : [350, 900];
    await page.mouse.move(fromX, 300);
    await page.mouse.down();
    for (let step = 1; step <= stepsAStroke; step += 1) {
      await page.mouse.move(fromX + ((toX - fromX) * step) / stepsAStroke, 300 + 2 * (step % 30));
      await page.waitForTimeout(8);
    }
    await page.mouse.up();
  }
};

const folder = mkdtempSync(`${tmpdir()}/fairlead-pan-`);
mkdirSync(folder, { recursive: true });
writeFileSync(`${folder}/many.boat.json`, JSON.stringify(largeBoat(devices)));
const { address, stop } = await serveBoats(folder);
const executablePath = findBrowser();
if (executablePath === undefined) throw new Error('No browser was found; set CHROME_PATH.');
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
await page.goto(`${address}/#/boat/many`);
await page.locator('.sheet-svg .balloon').first().waitFor({ timeout: 120_000 });
// the search for better layouts would share the two cores with the drawing
const stopButton = page.locator('.progress button');
if ((await stopButton.count()) > 0) await stopButton.first().click();
await page.waitForTimeout(3000);
const elements = await page.locator('.sheet-svg *').count();
await page.evaluate(counting);
await drag(page);
const times = (await page.evaluate<number[]>('globalThis.frameTimes')).sort((a, b) => a - b);
await browser.close();
stop();
rmSync(folder, { recursive: true });
const at = (share: number): number => times[Math.floor((times.length - 1) * share)] ?? 0;
const row = (what: string, ms: number): void =>
  console.log(
    `${what.padEnd(34)} ${ms.toFixed(1).padStart(7)} ms   ${(ms / limitMs).toFixed(2)} of ${limitMs.toFixed(1)} ms`,
  );
console.log(`${devices} devices, ${elements} elements, ${times.length} frames while dragging`);
row('time of a frame, median', at(0.5));
row('time of a frame, p95', at(0.95));
row('time of a frame, slowest', at(1));
