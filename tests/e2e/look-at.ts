import type { CDPSession, Page } from 'playwright-core';
import { barriers, windows } from './app-under-test.ts';
import { faintWords, pastEdgePx, pastFootPx, smallTargets, toldByColourAlone, unseenFocus } from './looked-at.ts';
import { badNames, cutWords, hiddenFocus, sideways, tightTargets } from './looked-at-small.ts';

/** Windows as they come of a laptop zoomed to 200 and 400 % (WCAG 2.2, 1.4.4 and 1.4.10), and a phone under a finger. */
const small = [
  { name: 'at 200 %', size: { width: 720, height: 450 }, finger: false },
  { name: 'at 400 %', size: { width: 320, height: 256 }, finger: false },
  { name: 'on a phone', size: windows.phone, finger: true },
] as const;

/** Distances between letters, words, lines and paragraphs that a reader may ask for (WCAG 2.2, 1.4.12). */
const spaced =
  '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }';

/** Lays a sheet of style over the page, in place of the one before, by the one way that its own policy allows. */
const spaceOut = (page: Page, style: string): Promise<void> =>
  page.evaluate((text) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(text);
    document.adoptedStyleSheets = [sheet];
  }, style);

const lightUp = (page: Page, light: 'day' | 'dusk' | 'night'): Promise<void> =>
  page.evaluate((name) => {
    document.documentElement.dataset.theme = name;
  }, light);

/** Words too faint in the other lights; what stands in the way by day tells of that one. All other things are the same in each. */
const faintByLight = async (page: Page): Promise<readonly string[]> => {
  const faint: string[] = [];
  for (const light of ['dusk', 'night'] as const) {
    await lightUp(page, light);
    faint.push(...(await faintWords(page)).map((one) => `${light}: ${one}`));
  }
  await lightUp(page, 'day');
  return faint;
};

const amissWhenSmall = async (page: Page, cdp: CDPSession): Promise<readonly string[]> => {
  const amiss: string[] = [];
  for (const { name, size, finger } of small) {
    await page.setViewportSize(size);
    if (finger) await cdp.send('Emulation.setTouchEmulationEnabled', { enabled: true, maxTouchPoints: 1 });
    const found = [
      ...(await cutWords(page)),
      ...(await sideways(page)),
      ...(finger ? await hiddenFocus(page) : []),
      ...(finger ? await smallTargets(page) : []),
      ...((await pastEdgePx(page)) > 0 ? ['past the edge'] : []),
    ];
    amiss.push(...found.map((one) => `${name}: ${one}`));
  }
  await cdp.send('Emulation.setTouchEmulationEnabled', { enabled: false });
  await page.setViewportSize(windows.laptop);
  return amiss;
};

/** What stands in the way of anybody on the screen as it is open on a laptop by day: there, in each light, and in small windows. */
export const amissOn = async (
  page: Page,
  cdp: CDPSession,
  { partsScroll = true }: { partsScroll?: boolean } = {},
): Promise<readonly string[]> => {
  await spaceOut(page, spaced);
  const cut = (await cutWords(page)).map((one) => `spaced: ${one}`);
  await spaceOut(page, '');
  return [
    ...(await barriers(page)),
    ...(await badNames(page)),
    ...(await unseenFocus(page)),
    ...(await toldByColourAlone(page)),
    ...(await tightTargets(page)),
    ...((await pastEdgePx(page)) > 0 ? ['past the edge'] : []),
    ...(partsScroll && (await pastFootPx(page)) > 0 ? ['past the foot'] : []),
    ...cut,
    ...(await faintByLight(page)),
    ...(await amissWhenSmall(page, cdp)),
  ];
};
