// npm test: everything a change must pass, from a clean checkout, ending with one line of counts.
import './node-version.mjs';
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findBrowser } from './browser.mjs';
import { installSecondOpinions } from './debian-package.mjs';
import { stop } from './node-version.mjs';
import { build, install, root } from './ready.mjs';

install();
installSecondOpinions();
const browser = findBrowser();
if (browser === undefined) {
  stop(
    'The tests open the app in a browser and none was found; install Chromium or Chrome, or set CHROME_PATH to one.',
  );
}

const counts = { passed: 0, failed: 0, skipped: 0 };
const bin = (name) => join(root, 'node_modules', '.bin', name);

const stage = (name, command, args) => {
  const started = Date.now();
  const done = spawnSync(command, args, { cwd: root, encoding: 'utf8' });
  const passed = done.status === 0;
  counts[passed ? 'passed' : 'failed'] += 1;
  process.stdout.write(`${passed ? 'ok  ' : 'FAIL'} ${name} (${((Date.now() - started) / 1000).toFixed(1)} s)\n`);
  if (!passed) process.stdout.write(`${done.stdout}${done.stderr}\n`);
};

const vitest = () => {
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-test-'));
  const report = join(folder, 'report.json');
  const args = ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  spawnSync(bin('vitest'), args, { cwd: root, stdio: 'inherit', env: { ...process.env, CHROME_PATH: browser } });
  if (!existsSync(report)) {
    counts.failed += 1;
    return;
  }
  const result = JSON.parse(readFileSync(report, 'utf8'));
  counts.passed += result.numPassedTests;
  // A file that does not even load has no failed test of its own, but has failed.
  counts.failed += Math.max(result.numFailedTests, result.numFailedTestSuites > 0 ? 1 : 0);
  counts.skipped += result.numPendingTests + (result.numTodoTests ?? 0);
  rmSync(folder, { recursive: true });
};

for (const area of ['core', 'web', 'node']) stage(`types: ${area}`, bin('tsc'), ['-p', `tsconfig.${area}.json`]);
stage('lint and boundaries', bin('biome'), ['check', '--error-on-warnings', '.']);
stage('nothing unused', bin('knip'), []);
stage('schema files are current', bin('tsx'), ['tools/schema.ts', '--check']);
stage('sources page is current', bin('tsx'), ['tools/sources.ts', '--check']);
stage('rules page is current', bin('tsx'), ['tools/rules.ts', '--check']);
stage('the app’s glossary is current', bin('tsx'), ['tools/glossary.ts', '--check']);
stage('demo boats are current', bin('tsx'), ['tools/demo-boats/main.ts', '--check']);
build();
vitest();
process.stdout.write(`${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped\n`);
process.exit(counts.failed === 0 ? 0 : 1);
