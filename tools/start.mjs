// npm start: from a fresh clone to the app with the demo boats.
import './node-version.mjs';
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { build, install, root } from './ready.mjs';

install();
build();
const child = spawn(process.execPath, [join(root, 'dist/cli/main.js'), 'open', ...process.argv.slice(2)], {
  stdio: 'inherit',
});
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => child.kill(signal));
child.on('exit', (code) => process.exit(code ?? 0));
