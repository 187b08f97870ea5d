import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest, keepPicture, openBoat, settled } from './app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

interface At {
  readonly x: number;
  readonly y: number;
}

const said = (page: Page, words: string): Promise<unknown> =>
  page.waitForFunction((text) => document.querySelector('.edit-says')?.textContent?.includes(text) === true, words);

/** Fingers on the glass, as many as there are points. */
const touch = (glass: CDPSession, type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly At[]) =>
  glass.send('Input.dispatchTouchEvent', { type, touchPoints: points.map((at, id) => ({ ...at, id })) });

/** Moves fingers from where they are put down to where they are taken up, in some steps. */
const move = async (glass: CDPSession, ways: readonly { readonly from: At; readonly to: At }[]): Promise<void> => {
  const at = (share: number): At[] =>
    ways.map(({ from, to }) => ({ x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) }));
  await touch(glass, 'touchStart', at(0));
  for (const share of [0.1, 0.25, 0.5, 0.75, 1]) await touch(glass, 'touchMove', at(share));
  await touch(glass, 'touchEnd', []);
};

/** Where the rings round the places lie on the glass while something is in the hand: those that nothing covers. */
const rings = (page: Page): Promise<At[]> =>
  page.locator('.route-goals').evaluate((path) => {
    const matrix = path instanceof SVGGraphicsElement ? path.getScreenCTM() : null;
    const starts = [...(path.getAttribute('d') ?? '').matchAll(/M([-\d.]+) ([-\d.]+)a([\d.]+)/g)];
    return starts.flatMap(([, x, y, radius]) => {
      const at = new DOMPoint(Number(x) + Number(radius), Number(y)).matrixTransform(matrix ?? undefined);
      const onSheet = document.elementFromPoint(at.x, at.y)?.closest('.sheet-svg');
      return onSheet instanceof SVGElement ? [{ x: at.x, y: at.y }] : [];
    });
  });

const scaleOf = (page: Page): Promise<number> =>
  page
    .locator('.sheet-layer')
    .evaluate((layer) => (layer instanceof SVGGraphicsElement ? (layer.getScreenCTM()?.a ?? 0) : 0));

test('by fingers alone a unit is put aboard and dragged, the drawing pinched, a length taped and taken back', async () => {
  const page = await app.newPage({ window: 'tablet', light: 'day' });
  await openBoat(app, page, 'sandpiper/kit');
  const glass = await page.context().newCDPSession(page);
  await page.locator('.kit-found .row-button', { hasText: '4-inch colour instrument' }).first().tap();
  await page.locator('.route-goals').waitFor({ state: 'attached' });
  const [first, ...others] = await rings(page);
  if (first === undefined) throw new Error('no place is drawn');
  await page.touchscreen.tap(first.x, first.y);
  await said(page, 'Put 4-inch colour instrument');
  await page.locator('.save-line', { hasText: 'saved in' }).waitFor();
  // what is planned anew may move the balloon that is dragged next
  await settled(page);
  await keepPicture(page, 'by-touch-put');

  const { kit } = JSON.parse(readFileSync(join(app.folder, 'sandpiper', 'sandpiper.boat.json'), 'utf8'));
  const balloon = page.locator(`.balloon[data-about~="${kit.at(-1).id}"] circle`).first();
  const box = await balloon.boundingBox();
  if (box === null) throw new Error('the new unit is not drawn');
  const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const away = (at: At): number => Math.hypot(at.x - first.x, at.y - first.y);
  const to = others.toSorted((one, other) => away(other) - away(one))[0] ?? first;
  await move(glass, [{ from, to }]);
  await said(page, 'Move ');

  const before = await scaleOf(page);
  const sheet = await page.locator('.sheet-svg').boundingBox();
  if (sheet === null) throw new Error('there is no drawing');
  const middle = { x: sheet.x + sheet.width / 2, y: sheet.y + sheet.height / 2 };
  await move(glass, [
    { from: { x: middle.x - 40, y: middle.y }, to: { x: middle.x - 120, y: middle.y } },
    { from: { x: middle.x + 40, y: middle.y }, to: { x: middle.x + 120, y: middle.y } },
  ]);
  await expect.poll(() => scaleOf(page)).toBeGreaterThan(2 * before);

  await page.locator('.course a', { hasText: 'Boat' }).tap();
  const field = page.locator('.tape-field input').first();
  await field.tap();
  await field.fill('7 ft 9');
  await field.press('Enter');
  await said(page, 'taped');
  // the sentence grows when the plan has come, and the link behind it moves along
  await page.locator('.edit-says', { hasText: 'Planning anew' }).waitFor({ state: 'detached' });
  await page.locator('.edit-line').getByRole('button', { name: 'undo' }).tap();
  await said(page, 'Taken back');
  await keepPicture(page, 'by-touch-end');
  expect(app.complaints).toEqual([]);
});
