// Writes the types of the library: what TypeScript declares of its entry, and of the files that leads to, and nothing else.
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const types = join(root, 'dist/library/types');
const all = mkdtempSync(join(tmpdir(), 'fairlead-types-'));

/** The files a declaration names, as they were declared. @param {string} file */
const namedIn = (file) =>
  [...readFileSync(file, 'utf8').matchAll(/(?:from |import\()['"](\.[^'"]+)\.ts['"]/g)].map(([, name]) =>
    resolve(dirname(file), `${name}.d.ts`),
  );

// errors are found where the types of each area are checked
const tsc = join(root, 'node_modules/.bin/tsc');
const done = spawnSync(tsc, ['-p', 'tsconfig.library.json', '--noCheck', '--outDir', all], {
  cwd: root,
  encoding: 'utf8',
});
if (done.status !== 0) {
  process.stderr.write(done.stdout + done.stderr);
  process.exit(1);
}

rmSync(types, { recursive: true, force: true });
const reached = new Set([join(all, 'library/fairlead.d.ts')]);
for (const file of reached) {
  cpSync(file, join(types, relative(all, file)));
  for (const named of namedIn(file)) if (existsSync(named)) reached.add(named);
}
rmSync(all, { recursive: true });
