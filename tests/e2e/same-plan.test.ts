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
      }),
    );
    const worker = readdirSync(`${root}dist/web/assets`).find((asset) => asset.startsWith('plan-worker'));
    const page = await app.newPage({ window: 'laptop', light: 'day' });
    await page.goto(app.address);
    const browser = await page.evaluate(
      ({ address, boatText }) =>
        new Promise<unknown>((done, fail) => {
          const planner = new Worker(address, { type: 'module' });
          planner.onmessage = ({ data }) => {
            if (data.kind === 'answer' && data.settled === true) done(data.plan);
            if (data.kind === 'refused' || data.kind === 'fault') fail(new Error(JSON.stringify(data)));
          };
          planner.postMessage({ kind: 'plan', revision: 1, boatText });
        }),
      { address: `/assets/${worker}`, boatText: readFileSync(file, 'utf8') },
    );
    expect(JSON.stringify(browser)).toBe(JSON.stringify(terminal));
  },
);
