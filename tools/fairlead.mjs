// npm run fairlead -- ARGS: the command line from a checkout, installed and built when needed.
import './node-version.mjs';
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { build, install, root } from './ready.mjs';

install();
build();
// Ctrl-C is for the program, which says what it has; this waits for it.
process.on('SIGINT', () => undefined);
const done = spawnSync(process.execPath, [join(root, 'dist/cli/main.js'), ...process.argv.slice(2)], {
  stdio: 'inherit',
});
process.exit(done.status ?? 1);
