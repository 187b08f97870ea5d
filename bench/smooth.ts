import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { fileURLToPath } from 'node:url';
import { chromium, type Page } from 'playwright-core';
import { findBrowser } from '../tools/browser.mjs';
import { serveBoats } from '../tools/serve-examples.ts';
import { tell } from './figure.ts';
import { largeBoat } from './large-boat.ts';

/**
 * Frames of the page while a hand works on a made-up boat of 500 units, beside the same on Gannet in the same run: the
 * drawing moved and made larger, a place dragged, an edit planned anew. What counts are the ratios: the times are those
 * of one machine. Run after a build.
 */
const units = 500;
const frameMs = 1000 / 60;
const moves = 90;

interface Watched {
  /** times between two frames, ms, shortest first */
  readonly frames: readonly number[];
  /** times for which the thread of the page did nothing else, ms */
  readonly long: readonly number[];
}

/** Begins to watch; as text, because what runs in the page must not lean on helpers of this side. */
const watch = `(() => {
  const seen = { frames: [], long: [], isOn: true };
  new PerformanceObserver((list) => seen.long.push(...list.getEntries().map(({ duration }) => duration))).observe({
    type: 'longtask',
  });
  let last = performance.now();
  const tick = (now) => {
    seen.frames.push(now - last);
    last = now;
    if (seen.isOn) requestAnimationFrame(tick);
  };
  requestAnimationFrame(tick);
  globalThis.watched = seen;
})()`;

const watchedNow =
  '(() => { watched.isOn = false; return { frames: watched.frames.slice(1), long: watched.long }; })()';

const watched = async (page: Page, work: () => Promise<unknown>): Promise<Watched> => {
  await page.evaluate(watch);
  await work();
  const { frames, long }: Watched = await page.evaluate(watchedNow);
  return { frames: frames.toSorted((a, b) => a - b), long };
};

/** Times from a press to the first and to the whole plan on the screen, ms; after the whole one nothing was said for a while. */
interface Planned {
  readonly firstMs: number;
  readonly wholeMs: number;
}

/** So many edits are timed, and one before them, with which the engine is cold. */
const edits = 5;

/** Lets the unit whose card is open stay, go or come otherwise, and waits for the plan. */
const planned = `new Promise((done) => {
  const said = () => document.querySelector('.edit-says')?.textContent ?? '';
  const started = performance.now();
  let [before, firstMs, wholeMs] = [said(), 0, 0];
  document.querySelector('.fate-button[aria-pressed="false"]').click();
  const tick = () => {
    const nowMs = performance.now() - started;
    const isBusy = document.querySelector('.progress:empty') === null;
    if (said() !== before || (isBusy && firstMs > 0)) {
      before = said();
      firstMs ||= nowMs;
      wholeMs = nowMs;
    }
    if (firstMs > 0 && nowMs - wholeMs > 1500) done({ firstMs, wholeMs });
    else requestAnimationFrame(tick);
  };
  tick();
})`;

/** The middle of the first of these that can be seen. */
const middleOf = async (page: Page, selector: string): Promise<{ x: number; y: number }> => {
  const box = await page.locator(selector).first().boundingBox();
  if (box === null) throw new Error(`${selector} is not on the page`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

/** The middle of the first place that can be taken hold of: on a large sheet most lie outside the window. */
const placeInSight = `(() => {
  for (const ring of document.querySelectorAll('.place-mark .place-ring')) {
    const { left, top, width, height } = ring.getBoundingClientRect();
    const at = { x: left + width / 2, y: top + height / 2 };
    if (document.elementFromPoint(at.x, at.y)?.closest('.place-mark') === ring.parentElement) return at;
  }
})()`;

const drag = async (page: Page, from: { x: number; y: number }, spread: number): Promise<void> => {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (let step = 1; step <= moves; step += 1)
    await page.mouse.move(from.x + spread * Math.sin(step / 12), from.y + (spread / 3) * Math.sin(step / 7));
  await page.mouse.up();
};

const wheel = async (page: Page): Promise<void> => {
  const { x, y } = await middleOf(page, '.sheet-svg');
  await page.mouse.move(x, y);
  for (let step = 0; step < moves; step += 1) await page.mouse.wheel(0, step % 30 < 15 ? -60 : 60);
};

const settled = (page: Page): Promise<void> =>
  page.locator('.progress:empty').waitFor({ state: 'attached', timeout: 120_000 });

const measured = async (page: Page, address: string, id: string) => {
  await page.goto(`${address}/#/boat/${id}/lines`);
  await page.locator('.sheet-svg .balloon').first().waitFor({ timeout: 120_000 });
  await settled(page);
  await page.waitForTimeout(2000);
  const corner = await middleOf(page, '.sheet-svg');
  const panned = await watched(page, () => drag(page, corner, 200));
  const zoomed = await watched(page, () => wheel(page));
  await page.goto(`${address}/#/boat/${id}/boat`);
  await page.locator('.place-mark').first().waitFor();
  await page.waitForTimeout(1000);
  const place = await page.evaluate<{ x: number; y: number } | undefined>(placeInSight);
  if (place === undefined) throw new Error('no place is in sight');
  const dragged = await watched(page, () => drag(page, place, 60));
  await settled(page);
  await page.waitForTimeout(2000);
  await page.goto(`${address}/#/boat/${id}/kit`);
  await page.locator('.sheet-svg .balloon').first().focus();
  await page.keyboard.press('Enter');
  await page.locator('.fate-button').first().waitFor();
  await page.evaluate<Planned>(planned);
  const times: Planned[] = [];
  const edited = await watched(page, async () => {
    for (let turn = 0; turn < edits; turn += 1) times.push(await page.evaluate<Planned>(planned));
  });
  const elements = await page.locator('.sheet-svg *').count();
  return { elements, times, frames: { panned, zoomed, 'place dragged': dragged, 'edit planned': edited } };
};

const medianOf = (times: readonly Planned[], of: keyof Planned): number =>
  times.map((one) => one[of]).sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;
const at = (sorted: readonly number[], share: number): number => sorted[Math.floor((sorted.length - 1) * share)] ?? 0;
const ms = (value: number): string => `${value.toFixed(1).padStart(7)} ms`;

const folder = mkdtempSync(`${tmpdir()}/fairlead-smooth-`);
cpSync(fileURLToPath(new URL('../examples/gannet', import.meta.url)), `${folder}/gannet`, { recursive: true });
writeFileSync(`${folder}/many.boat.json`, JSON.stringify(largeBoat(units)));
const { address, stop } = await serveBoats(folder);
const executablePath = findBrowser();
if (executablePath === undefined) throw new Error('No browser was found; set CHROME_PATH.');
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
const gannet = await measured(page, address, 'gannet');
const many = await measured(page, address, 'many');
await browser.close();
stop();
rmSync(folder, { recursive: true });

console.log(
  `${units} units: ${many.elements} elements drawn; Gannet: ${gannet.elements}; a screen wants ${ms(frameMs)}`,
);
for (const what of ['panned', 'zoomed', 'place dragged', 'edit planned'] as const) {
  const [one, other] = [many.frames[what], gannet.frames[what]];
  for (const [name, share] of [
    ['median', 0.5],
    ['p95', 0.95],
    ['worst', 1],
  ] as const) {
    const [large, small] = [at(one.frames, share), at(other.frames, share)];
    tell({
      what: `${units} units, ${what}: time of a frame, ${name}`,
      value: large,
      unit: 'ms',
      ...(share < 1 ? { limit: frameMs } : {}),
      beside: [{ name: 'Gannet', value: small }],
    });
  }
  const longest = (of: Watched): string => `${of.long.length}, the longest ${ms(Math.max(0, ...of.long))}`;
  console.log(`${what.padEnd(14)} tasks over 50 ms: ${longest(one)}; Gannet ${longest(other)}`);
}
for (const [name, of, limitMs] of [
  ['first plan', 'firstMs', 250],
  ['whole plan', 'wholeMs', 400],
] as const) {
  const beside = [{ name: `${units} units`, value: medianOf(many.times, of) }];
  const value = medianOf(gannet.times, of);
  tell({ what: `Gannet: from a press to the ${name}, median`, value, unit: 'ms', limit: limitMs, beside });
}
