import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { tell } from './figure.ts';

/**
 * The binder of a boat by the built command, from a cold start: reading, planning, setting, writing. Beside it, in the same
 * run, how long a reader (poppler) takes to draw the same binder at 60 dpi. Argument: runs of each.
 */
const [runs = 5] = process.argv.slice(2).map(Number);

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'fairlead-bench-'));

const medianMs = (command: string, args: readonly string[]): number => {
  const times = Array.from({ length: runs }, () => {
    const started = performance.now();
    const { status, stderr } = spawnSync(command, args, { cwd: root, encoding: 'utf8' });
    if (status !== 0) throw new Error(`${command} ${args.join(' ')}: ${stderr}`);
    return performance.now() - started;
  });
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)] ?? 0;
};

const pagesOf = (file: string): string =>
  /Pages: +(\d+)/.exec(spawnSync('pdfinfo', [file], { encoding: 'utf8' }).stdout)?.[1] ?? '?';

const limitsMs = {
  gannet: { limit: 3000, stretch: 1500 },
  sandpiper: { limit: 3000, stretch: 1500 },
  bonxie: { limit: 12_000 },
} as const;

try {
  for (const [name, bounds] of Object.entries(limitsMs)) {
    const binder = join(folder, `${name}.pdf`);
    const boat = `examples/${name}/${name}.boat.json`;
    const planned = medianMs('node', ['dist/cli/main.js', 'plan', boat]);
    const written = medianMs('node', ['dist/cli/main.js', 'plan', boat, '--binder', binder]);
    const drawn = medianMs('pdftoppm', ['-r', '60', binder, join(folder, name)]);
    tell({
      what: `${name}: the whole binder by the command, from a cold start, median`,
      value: written,
      unit: 'ms',
      ...bounds,
      beside: [{ name: 'poppler draws it at 60 dpi', value: drawn }],
      note: `${pagesOf(binder)} pages, ${Math.round(statSync(binder).size / 1024)} kB; the plan alone ${Math.round(planned)} ms`,
    });
  }
} finally {
  rmSync(folder, { recursive: true });
}
