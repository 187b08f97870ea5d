import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { build } from 'vite';
import { aBoat } from '../../src/core/boat/a-boat.test-helper.ts';
import { readBoat } from '../../src/core/boat/read-boat.ts';
import { writeBoat } from '../../src/core/boat/write-boat.ts';
import { readLog } from '../../src/core/log/read-log.ts';
import { contentHash } from '../../src/node/files/content-hash.ts';
import { saveBoat } from '../../src/node/files/save-boat.ts';

/** What came of killing a program that edits, saves and writes its log. */
export interface Killed {
  kills: number;
  saves: number;
  lines: number;
  /** kills in the middle of a save, by what they left behind */
  withMark: number;
  withTemporary: number;
  tornLines: number;
  readonly faults: string[];
}

/** The loop as one plain script, which starts in a fraction of the time. */
const builtLoop = async (folder: string): Promise<string> => {
  const entry = join(import.meta.dirname, 'edit-loop.ts');
  const output = { entryFileNames: 'edit-loop.mjs' };
  await build({
    configFile: false,
    logLevel: 'error',
    // the script lies where no packages are, so it carries what it needs
    ssr: { noExternal: true },
    build: { ssr: entry, outDir: join(folder, 'built'), target: 'node20', rollupOptions: { output } },
  });
  return join(folder, 'built', 'edit-loop.mjs');
};

/** Runs the loop, kills it some moment after its first save, and gives all it told until then. */
const runAndKill = async (script: string, { path, seed, afterMs }: { path: string; seed: number; afterMs: number }) => {
  const child = spawn(process.execPath, [script, path, String(seed)], { stdio: ['ignore', 'pipe', 'inherit'] });
  let told = '';
  child.stdout.on('data', (chunk: Buffer) => {
    told += chunk.toString();
  });
  const died = once(child, 'close').then(() => true);
  while (!told.includes('saved ')) {
    if (await Promise.race([died, wait(2).then(() => false)]))
      throw new Error('The loop ended before it saved anything.');
  }
  await wait(afterMs);
  child.kill('SIGKILL');
  await died;
  return told.split('\n');
};

const last = <Value>(list: readonly Value[]): Value | undefined => list.at(-1);
const wordsAfter = (told: readonly string[], what: string): string[] =>
  told.flatMap((line) => (line.startsWith(`${what} `) ? [line.slice(what.length + 1)] : []));

const unreadable = (text: string): string | undefined => {
  try {
    readBoat(text);
    return undefined;
  } catch (error) {
    return String(error);
  }
};

/** Looks at the folder after a kill: what was told as saved is there, or something newer, and all of it whole. */
const lookAfter = (
  path: string,
  { told, all, killed }: { told: readonly string[]; all: Set<string>; killed: Killed },
): void => {
  const folder = join(path, '..');
  const text = readFileSync(path, 'utf8');
  const fault = (says: string): void => void killed.faults.push(`after kill ${killed.kills}: ${says}`);
  const broken = unreadable(text);
  if (broken !== undefined) fault(`the boat file: ${broken}`);
  const [saving, saved] = [wordsAfter(told, 'saving'), wordsAfter(told, 'saved')];
  if (![last(saved), last(saving)].includes(contentHash(text))) fault('the file is not what was saved last, nor newer');
  const backups = join(folder, 'tern.backups');
  const kept = readdirSync(backups).filter((name) => name.endsWith('.json'));
  // those from before were looked at before
  for (const name of kept.slice(-4)) {
    const wrong = unreadable(readFileSync(join(backups, name), 'utf8'));
    if (wrong !== undefined) fault(`backup ${name}: ${wrong}`);
  }
  for (const id of wordsAfter(told, 'logged')) all.add(id);
  const { entries, broken: torn } = readLog(readFileSync(join(folder, 'tern.log.jsonl'), 'utf8'));
  const there = new Set(entries.map(({ id }) => id));
  for (const id of all) if (!there.has(id)) fault(`line ${id} is lost`);
  if (torn.length > killed.kills) fault(`${torn.length} torn lines`);
  const left = [...readdirSync(folder), ...readdirSync(backups)];
  killed.saves += saved.length;
  killed.lines = all.size;
  killed.tornLines = torn.length;
  killed.withMark += left.some((name) => name.endsWith('.lock')) ? 1 : 0;
  killed.withTemporary += left.some((name) => name.endsWith('.tmp')) ? 1 : 0;
};

/**
 * Kills a program that edits, saves and writes its log, again and again in one folder, each time at another moment, and
 * looks at what is left. At the end a save a little later sweeps up whatever the kills left behind.
 */
export const killLoop = async ({
  folder,
  kills,
  lot,
}: {
  folder: string;
  kills: number;
  lot: (below: number) => number;
}): Promise<Killed> => {
  const script = await builtLoop(folder);
  const path = join(folder, 'tern.boat.json');
  writeFileSync(path, writeBoat(aBoat().boat));
  const killed: Killed = { kills: 0, saves: 0, lines: 0, withMark: 0, withTemporary: 0, tornLines: 0, faults: [] };
  const all = new Set<string>();
  while (killed.kills < kills) {
    killed.kills += 1;
    const told = await runAndKill(script, { path, seed: killed.kills, afterMs: lot(400) / 10 });
    lookAfter(path, { told, all, killed });
  }
  const later = () => new Date(Date.now() + 120_000);
  await saveBoat({ path, text: readFileSync(path, 'utf8').replace('"name": "', '"name": "The '), now: later });
  const strays = readdirSync(folder, { recursive: true }).filter((name) => /\.(tmp|lock)(-\d+)*$/.test(String(name)));
  if (strays.length > 0) killed.faults.push(`left behind: ${strays.join(', ')}`);
  return killed;
};
