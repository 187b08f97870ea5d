import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AppUnderTest, appUnderTest } from './app-under-test.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});
afterAll(() => app.close());

test.each(readdirSync(`${root}examples`))(
  'the browser and the terminal give the same plan of %s, byte for byte',
  async (name) => {
    const file = `${root}examples/${name}/${name}.boat.json`;
    const terminal: unknown = JSON.parse(
      execFileSync(process.execPath, [`${root}dist/cli/main.js`, 'plan', file, '--json'], {
        encoding: 'utf8',
        stdio: 'pipe',
        maxBuffer: 64 * 1024 * 1024,
      }),
    );
    const worker = readdirSync(`${root}dist/web/assets`).find((asset) => asset.startsWith('plan-worker'));
    const page = await app.samePage({ window: 'laptop', light: 'day' });
    const browser = await page.evaluate(
      ({ address, boatText }) =>
        new Promise<unknown>((done, fail) => {
          const planner = new Worker(address, { type: 'module' });
          planner.onmessage = ({ data }) => {
            if (data.kind === 'refused' || data.kind === 'fault') fail(new Error(JSON.stringify(data)));
            if (data.kind !== 'answer' || data.settled !== true) return;
            done(data.plan);
            planner.terminate();
          };
          // no picture lies beside any of them, and the terminal looks
          planner.postMessage({ kind: 'plan', revision: 1, boatText, pictures: [] });
        }),
      { address: `/assets/${worker}`, boatText: readFileSync(file, 'utf8') },
    );
    expect(JSON.stringify(browser)).toBe(JSON.stringify(terminal));
  },
);

test('in the browser an edit taken back gives the plan of before, byte for byte, and the file as it was read', async () => {
  const worker = readdirSync(`${root}dist/web/assets`).find((asset) => asset.startsWith('plan-worker'));
  const page = await app.samePage({ window: 'laptop', light: 'day' });
  const boatText = readFileSync(`${root}examples/gannet/gannet.boat.json`, 'utf8');
  const [before, edited, after] = await page.evaluate(
    ({ address, text }) =>
      new Promise<{ plan: string; file: string }[]>((done, fail) => {
        const planner = new Worker(address, { type: 'module' });
        const goes = { edit: 'set-fate', params: { unit: 'gnss', fate: 'goes' } };
        const changes = [{ kind: 'edit', edits: [goes] }, { kind: 'undo' }];
        const answers: { plan: string; file: string }[] = [];
        planner.onmessage = ({ data }) => {
          if (['refused', 'edit-refused', 'fault'].includes(data.kind)) fail(new Error(JSON.stringify(data)));
          if (data.kind !== 'answer' || data.settled !== true) return;
          answers.push({ plan: JSON.stringify(data.plan), file: data.boatText });
          const change = changes.shift();
          if (change === undefined) {
            done(answers);
            planner.terminate();
          } else planner.postMessage({ kind: 'change', revision: answers.length + 1, opened: 1, change });
        };
        planner.postMessage({ kind: 'plan', revision: 1, boatText: text });
      }),
    { address: `/assets/${worker}`, text: boatText },
  );
  expect(edited?.plan).not.toBe(before?.plan);
  expect(after).toEqual(before);
  expect(after?.file).toBe(boatText);
});
