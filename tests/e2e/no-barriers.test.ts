import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CDPSession, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { aBoat } from '../../src/core/boat/a-boat.test-helper.ts';
import { writeBoat } from '../../src/core/boat/write-boat.ts';
import { type StepId, stepIds } from '../../src/web/app/route.ts';
import {
  type AppUnderTest,
  appUnderTest,
  contrasts,
  keepPicture,
  openAnother,
  openBoat,
  settled,
} from './app-under-test.ts';
import { amissOn } from './look-at.ts';
import { faintWords } from './looked-at.ts';
import { opensNothing, screens } from './screens.ts';

let app: AppUnderTest;
let empty: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
  empty = await appUnderTest({ demos: false });
});
afterAll(async () => {
  await app.close();
  await empty.close();
});

/** Looks at one screen after another of a page, and keeps what was found amiss on each. */
const looker = (page: Page, cdp: CDPSession, how?: Parameters<typeof amissOn>[2]) => {
  const found: Record<string, readonly string[]> = {};
  return {
    found,
    look: async (screen: string): Promise<void> => {
      const amiss = await amissOn(page, cdp, how);
      if (amiss.length > 0) found[screen] = amiss;
    },
  };
};

const openedOnLaptop = async (
  of: AppUnderTest,
  how?: Parameters<typeof amissOn>[2],
): Promise<{ page: Page } & ReturnType<typeof looker>> => {
  const page = await of.newPage({ window: 'laptop', light: 'day' });
  return { page, ...looker(page, await page.context().newCDPSession(page), how) };
};

/** Opens one of each kind of what is folded, and of what is folded in that. */
const unfold = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const kinds = new Set<string>();
    for (let round = 0; round < 3; round += 1) {
      for (const part of document.querySelectorAll('details')) {
        const kind = `${part.className} in ${part.parentElement?.className}`;
        if (kinds.has(kind) || !part.checkVisibility()) continue;
        kinds.add(kind);
        part.open = true;
      }
      // what was unfolded draws what it holds
      await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
    }
  });

/** The commands that the page offers now, by their ids. */
const commandsHere = async (page: Page): Promise<readonly string[]> => {
  await page.getByRole('button', { name: 'what can be done here' }).click();
  const options = page.locator('.command-finder [role="option"]');
  await options.first().waitFor();
  const ids = await options.evaluateAll((all) => all.map(({ id }) => id.replace(/^_r_\w+_-/, '')));
  await page.keyboard.press('Escape');
  return ids;
};

const goTo = async (page: Page, step: StepId): Promise<void> => {
  await page.locator('.course a').nth(stepIds.indexOf(step)).click();
  await page.locator('.waypoint.here').nth(0).waitFor();
  await page.locator('.margin .block').first().waitFor();
};

/** Opens a table, where there is one, and says what it is called. */
const switchOn = async (page: Page, table: Locator | undefined): Promise<string> => {
  if (table === undefined) return '';
  await table.click();
  await page.locator('.table-switch[aria-expanded="true"]').waitFor();
  return (await table.textContent()) ?? '';
};

const known = new Set(Object.values(screens).flatMap((all) => all.map(({ command }) => command)));
const isAccountedFor = (id: string): boolean => known.has(id) || opensNothing.some((one) => one.test(id));

test('no screen of a boat has a barrier, in any light or window, and none is overlooked', async () => {
  const { page, look, found } = await openedOnLaptop(app);
  await openBoat(app, page, 'sandpiper/boat');
  const unheardOf: string[] = [];
  for (const step of stepIds) {
    await goTo(page, step);
    unheardOf.push(...(await commandsHere(page)).filter((id) => !isAccountedFor(id)));
    await unfold(page);
    const own = screens[step] ?? [];
    const tables = await page.locator('.table-switch').all();
    // the first table stands open while the first of the others is looked at, as each look takes seconds
    const [first, ...others] = tables;
    const firstName = [step, await switchOn(page, first)].filter(Boolean).join(': ');
    if (own.length === 0) await look(firstName);
    let isFirst = own.length > 0;
    for (const { name, open, withNext, shut } of own) {
      await open(page);
      if (withNext === undefined) await look(isFirst ? `${firstName}, ${name}` : `${step}: ${name}`);
      if (withNext === undefined && isFirst) await first?.click();
      isFirst &&= withNext !== undefined;
      await shut?.(page);
    }
    for (const table of others) {
      const name = await switchOn(page, table);
      await look(`${step}: ${name}`);
      await table.click();
    }
  }
  await keepPicture(page, 'last-step-laptop-day');
  // add it to the list of screens, with the command that opens it, or say there that it opens nothing
  expect(unheardOf).toEqual([]);
  expect(found).toEqual({});
  expect(app.complaints).toEqual([]);
}, 300_000);

/** Puts a boat into the folder that a newer program wrote, and one that is damaged and has a backup. */
const putOddOnes = (folder: string): void => {
  const tern = writeBoat(aBoat().with({ name: 'Tern' }).boat);
  const newer = tern
    .replace('"version": 1', '"version": 2')
    .replace('"name": "Tern"', '"name": "Tern", "mood": "calm"');
  writeFileSync(join(folder, 'newer.boat.json'), newer);
  writeFileSync(join(folder, 'damaged.boat.json'), tern.slice(0, 200));
  mkdirSync(join(folder, 'damaged.backups'));
  writeFileSync(join(folder, 'damaged.backups', '2026-03-01-09-30-00-000.json'), tern);
};

test('the first page has no barrier, nor have the list of boats, a newer boat and a damaged one', async () => {
  const { page, look, found } = await openedOnLaptop(empty, { partsScroll: false });
  await page.goto(empty.address);
  await page.getByRole('radio', { name: 'ketch' }).check();
  await page.getByLabel('Name').fill('Tern');
  await page.getByLabel('Length').fill('31 ft');
  await page.getByLabel('Beam').fill('wide');
  await page.getByText('Write a length, for example').waitFor();
  await page.locator('.top-bar input[type=file]').setInputFiles({
    name: 'broken.boat.json',
    mimeType: 'application/json',
    buffer: Buffer.from('{ "format": '),
  });
  await page.locator('.refusal').first().waitFor();
  await look('a new boat, and a file refused');
  await page.goto(app.address);
  await page.locator('.boats a').first().waitFor();
  await look('the boats');
  putOddOnes(app.folder);
  await page.goto(`${app.address}/#/boat/damaged`);
  await page.getByRole('button', { name: /^go on from this: As she was until/ }).waitFor();
  await look('a damaged boat, and what there is of her');
  await page.goto(`${app.address}/#/boat/newer`);
  await page.getByText('A newer Fairlead wrote this file').first().waitFor();
  await settled(page);
  await look('a boat of a newer program, to be looked at');
  expect(found).toEqual({});
  expect(empty.complaints).toEqual([]);
});

test('nothing that overlaps makes a word too faint, as axe finds it on the first page and beside the drawing', async () => {
  const wish = { window: 'laptop', light: 'day' } as const;
  const onFirst = await contrasts(await app.samePage(wish));
  const page = await openAnother(app, wish, 'sandpiper/needs');
  expect([...onFirst, ...(await contrasts(page))]).toEqual([]);
});

test('a word is told to be faint by its ratio to what it stands on, and no other is', async () => {
  const page = await empty.newPage({ window: 'laptop', light: 'day' });
  await page.setContent(`<body style="background: #fff">
    <p style="color: #777">just too faint</p>
    <p style="color: #767676">just enough</p>
    <div style="background: #222"><p style="color: #767676">faint on dark</p></div>
    <div style="opacity: 0.5"><p style="color: #333">faint by what it lies in</p></div>
    <h1 style="color: #949494; font-size: 24px">large letters</h1>
    <button disabled style="color: #ccc">cannot be pressed</button></body>`);
  const told = await faintWords(page);
  expect(told.map((one) => /“(.*)”/.exec(one)?.[1])).toEqual([
    'just too faint',
    'faint on dark',
    'faint by what it lies in',
  ]);
  // the published pair: #777 on white is 4.48, #767676 is 4.54 (WCAG 2.2, 1.4.3)
  expect(told[0]).toContain('4.48');
  expect(await contrasts(page)).toHaveLength(told.length);
});
