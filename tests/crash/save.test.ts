import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { build } from 'vite';
import { expect, onTestFinished, test } from 'vitest';
import { saveBoat } from '../../src/node/files/save-boat.ts';

/** The loop as one plain script, which starts in a fraction of the time. */
const builtLoop = async (folder: string): Promise<string> => {
  const entry = join(import.meta.dirname, 'save-loop.ts');
  const output = { entryFileNames: 'save-loop.mjs' };
  await build({
    configFile: false,
    logLevel: 'error',
    // the script lies where no packages are, so it carries what it needs
    ssr: { noExternal: true },
    build: { ssr: entry, outDir: join(folder, 'built'), target: 'node20', rollupOptions: { output } },
  });
  return join(folder, 'built', 'save-loop.mjs');
};

const startSaving = async (script: string, args: readonly string[]): Promise<ChildProcess> => {
  const child = spawn(process.execPath, [script, ...args], { stdio: ['ignore', 'pipe', 'inherit'] });
  const died = once(child, 'exit').then(() => Promise.reject(new Error('The loop ended before it saved anything.')));
  await Promise.race([once(child.stdout, 'data'), died]);
  died.catch(() => undefined);
  return child;
};

/** Whether a text is all of what one turn of the loop saves: every row says the same name. */
const isWhole = (text: string): boolean => {
  const { name, rows }: { name: string; rows: string[] } = JSON.parse(text);
  return rows.length === 20_000 && rows.every((row) => row === name);
};

/** Enough for every commit; `KILLS=500` for a long run. */
const kills = Number(process.env.KILLS ?? 20);

test(`a program killed ${kills} times while it saves always leaves a whole file`, {
  timeout: 60_000 + kills * 1000,
}, async () => {
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-crash-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const script = await builtLoop(folder);
  const path = join(folder, 'tern.boat.json');
  for (let kill = 0; kill < kills; kill += 1) {
    const child = await startSaving(script, [path, `Tern ${kill}`, `Skua ${kill}`]);
    const gone = once(child, 'exit');
    // from before a save to some way into the next, in steps that do not fall together with it
    await wait((kill % 20) * 1.7);
    child.kill('SIGKILL');
    await gone;
    expect(isWhole(readFileSync(path, 'utf8'))).toBe(true);
  }
  const backups = readdirSync(join(folder, 'tern.backups')).filter((name) => name.endsWith('.json'));
  expect(backups.length).toBeGreaterThan(0);
  for (const name of backups) expect(isWhole(readFileSync(join(folder, 'tern.backups', name), 'utf8'))).toBe(true);
  const later = () => new Date(Date.now() + 120_000);
  await saveBoat({ path, text: '{}', now: later });
  const strays = readdirSync(folder, { recursive: true }).filter((name) => String(name).endsWith('.tmp'));
  expect(strays).toEqual([]);
});
