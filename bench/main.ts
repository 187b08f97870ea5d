import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import type { Figure } from './figure.ts';
import { type Bench, benches } from './run/benches.ts';
import { builtBench } from './run/built-bench.ts';
import { type Results, resultsPage } from './run/results-page.ts';

/**
 * Runs the benches named, or all of them, one after the other, and writes what they say to bench/RESULTS.md and to
 * bench/results.json, from which the page is made. `--note`: what is to be said of the machine and the day. What stands after
 * `--with` goes to the bench itself.
 */
const root = fileURLToPath(new URL('..', import.meta.url));
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { note: { type: 'string' }, with: { type: 'string', multiple: true } },
});

const unknown = positionals.filter((id) => benches.every((bench) => bench.id !== id));
if (unknown.length > 0) {
  console.error(`There is no bench ${unknown.join(', ')}; there are ${benches.map(({ id }) => id).join(', ')}.`);
  process.exit(2);
}
const wanted = benches.filter(({ id }) => positionals.length === 0 || positionals.includes(id));

const run = async ({ file, title }: Bench): Promise<Figure[] | undefined> => {
  console.log(`\n# ${title}`);
  const program = await builtBench(file);
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-figures-'));
  const figures = join(folder, 'figures');
  const args = ['--expose-gc', program, ...(values.with ?? [])];
  const { status } = spawnSync(process.execPath, args, {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, FAIRLEAD_FIGURES: figures },
  });
  const told = existsSync(figures) ? readFileSync(figures, 'utf8').trim().split('\n') : [];
  rmSync(folder, { recursive: true });
  // reason: the lines are what `tell` wrote
  return status === 0 ? told.map((text) => JSON.parse(text) as Figure) : undefined;
};

if (wanted.some(({ needsBuild }) => needsBuild)) {
  const { status } = spawnSync('npm', ['run', '-s', 'build'], { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] });
  if (status !== 0) process.exit(1);
}
const store = join(root, 'bench/results.json');
// reason: the file is what the last run wrote
let results: Results = existsSync(store) ? (JSON.parse(readFileSync(store, 'utf8')) as Results) : {};
let failed = 0;
for (const bench of wanted) {
  const figures = await run(bench);
  if (figures === undefined) {
    console.error(`The bench ${bench.id} broke down; its figures stay as they were.`);
    failed += 1;
    continue;
  }
  const note = values.note === undefined ? {} : { note: values.note };
  const machine = { cores: availableParallelism(), node: process.versions.node, ...note };
  results = { ...results, [bench.id]: { ...machine, figures } };
  writeFileSync(store, `${JSON.stringify(results, undefined, 2)}\n`);
  writeFileSync(join(root, 'bench/RESULTS.md'), resultsPage(results));
}
process.exit(failed === 0 ? 0 : 1);
