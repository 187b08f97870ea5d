// Makes a checkout ready to run: installs what is missing, builds what is stale. Plain JavaScript, because it runs before anything is installed.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { accessSync, constants, existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { stop } from './node-version.mjs';

export const root = fileURLToPath(new URL('..', import.meta.url));
const installStamp = join(root, 'node_modules', '.fairlead-installed');
const buildStamp = join(root, 'dist', '.fairlead-built');
const builtFrom = [
  'src',
  'examples',
  'package.json',
  'package-lock.json',
  'vite.config.ts',
  'vite.phone.config.ts',
  'vite.cli.config.ts',
  'vite.library.config.ts',
  'tsconfig.library.json',
  'tools/library-types.mjs',
];

const lockHash = () =>
  createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex');

const textOf = (path) => (existsSync(path) ? readFileSync(path, 'utf8') : '');

const newestMs = (path) => {
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return Math.max(0, ...readdirSync(path).map((name) => newestMs(join(path, name))));
};

const run = (command, args, whatFor) => {
  const done = spawnSync(command, args, { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  if (done.status === 0) return;
  process.stderr.write(`${done.stdout ?? ''}${done.stderr ?? ''}\n`);
  stop(`${whatFor} did not work; the lines above say why.`);
};

const mustBeWritable = () => {
  try {
    accessSync(root, constants.W_OK);
  } catch {
    stop(
      `The folder ${root} is read-only, so nothing can be installed or built in it; copy it to a folder you may write to.`,
    );
  }
};

/** Installs the packages of package-lock.json unless exactly these are there already. */
export function install() {
  if (textOf(installStamp) === lockHash()) return;
  mustBeWritable();
  process.stderr.write('Installing packages (once, about half a minute) …\n');
  run('npm', ['ci', '--no-fund', '--no-audit', '--loglevel=error'], 'Installing the packages');
  writeFileSync(installStamp, lockHash());
}

/** Builds the app and the command line unless the build is newer than every file it is made from. */
export function build() {
  const sourcesMs = Math.max(...builtFrom.map((name) => newestMs(join(root, name))));
  if (existsSync(buildStamp) && statSync(buildStamp).mtimeMs >= sourcesMs) return;
  mustBeWritable();
  process.stderr.write('Building the app …\n');
  run('npm', ['run', '--silent', 'build'], 'Building');
  writeFileSync(buildStamp, 'built\n');
}
