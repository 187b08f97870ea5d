import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { chromium } from 'playwright-core';
import { findBrowser } from '../tools/browser.mjs';
import { serveBoats } from '../tools/serve-examples.ts';
import { tell } from './figure.ts';
import { largeBoat } from './large-boat.ts';

/** Frames while a hand drags the sheet of a made-up boat of 500 devices, beside the 16.7 ms of a screen. Run after a build. */
const devices = 500;
const limitMs = 1000 / 60;
const frames = 360;

/**
 * Drags the sheet by a step in every frame, to and fro. Written as text, because what runs in the page must not lean on
 * helpers of this side.
 */
const dragging = `new Promise((done) => {
  const svg = document.querySelector('.sheet-svg');
  const box = svg.getBoundingClientRect();
  const at = (step) => ({
    bubbles: true,
    cancelable: true,
    view: window,
    button: 0,
    buttons: 1,
    clientX: box.left + box.width / 2 + 300 * Math.sin(step / 40),
    clientY: box.top + box.height / 2 + 150 * Math.sin(step / 25),
  });
  svg.dispatchEvent(new MouseEvent('mousedown', at(0)));
  let step = 0;
  const tick = () => {
    step += 1;
    window.dispatchEvent(new MouseEvent(step < ${frames} ? 'mousemove' : 'mouseup', at(step)));
    if (step < ${frames}) requestAnimationFrame(tick);
    else done();
  };
  requestAnimationFrame(tick);
})`;

interface TraceEvent {
  readonly name: string;
  readonly ts: number;
}

/** Times between frames that reached the screen, in milliseconds, shortest first. */
const betweenFramesMs = (trace: Buffer): number[] => {
  const { traceEvents }: { traceEvents: TraceEvent[] } = JSON.parse(trace.toString());
  const drawnMs = traceEvents
    .filter(({ name }) => name === 'DrawFrame')
    .map(({ ts }) => ts / 1000)
    .sort((a, b) => a - b);
  return drawnMs
    .slice(1)
    .map((ms, at) => ms - (drawnMs[at] ?? ms))
    .sort((a, b) => a - b);
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
await page.evaluate(dragging); // the first time, the engine is cold
await browser.startTracing(page, { categories: ['disabled-by-default-devtools.timeline.frame'] });
await page.evaluate(dragging);
const times = betweenFramesMs(await browser.stopTracing());
await browser.close();
stop();
rmSync(folder, { recursive: true });
const at = (share: number): number => times[Math.floor((times.length - 1) * share)] ?? 0;
const note = `${elements} elements; ${times.length} frames reached the screen of ${frames} drags`;
tell({ what: `${devices} devices dragged: time of a frame, median`, value: at(0.5), unit: 'ms', limit: limitMs, note });
tell({ what: 'the same, p95', value: at(0.95), unit: 'ms', limit: limitMs });
tell({ what: 'the same, slowest', value: at(1), unit: 'ms', limit: limitMs });
