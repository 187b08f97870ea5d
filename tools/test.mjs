// npm test: everything a change must pass, from a clean checkout, ending with one line of counts.
import './node-version.mjs';
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findTestBrowser } from './browser.mjs';
import { stop } from './node-version.mjs';
import { build, install, root } from './ready.mjs';

/** How a program ended, with all it said. */
const ended = (child) =>
  new Promise((done) => {
    let said = '';
    const hear = (chunk) => {
      said += chunk;
    };
    child.stdout?.setEncoding('utf8').on('data', hear);
    child.stderr?.setEncoding('utf8').on('data', hear);
    child.on('error', (error) => done({ status: 1, said: `${said}${error.message}` }));
    child.on('close', (status) => done({ status, said }));
  });

const forTests = ended(spawn(process.execPath, [join(root, 'tools/install-for-tests.mjs')], { stdio: 'inherit' }));
install();

const counts = { passed: 0, failed: 0, skipped: 0 };
const bin = (name) => join(root, 'node_modules', '.bin', name);

const stage = async (name, command, args) => {
  const started = Date.now();
  const { status, said } = await ended(spawn(command, args, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] }));
  const passed = status === 0;
  counts[passed ? 'passed' : 'failed'] += 1;
  process.stdout.write(`${passed ? 'ok  ' : 'FAIL'} ${name} (${((Date.now() - started) / 1000).toFixed(1)} s)\n`);
  if (!passed) process.stdout.write(`${said}\n`);
};

/** Runs stages two at a time, each begun as soon as one before it is done. */
const stages = async (waiting) => {
  const lane = async () => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) await stage(...next);
  };
  await Promise.all([lane(), lane()]);
};

const vitest = (browser) => {
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

// those that take longest first, so that neither lane is left alone in the end
await stages([
  ['the app and the command line are built', process.execPath, [join(root, 'tools/build.mjs')]],
  ...['node', 'web', 'core'].map((area) => [`types: ${area}`, bin('tsc'), ['-p', `tsconfig.${area}.json`]]),
  ['lint and boundaries', bin('biome'), ['check', '--error-on-warnings', '.']],
  ['nothing unused', bin('knip'), []],
  ['schema files are current', bin('tsx'), ['tools/schema.ts', '--check']],
  ['sources page is current', bin('tsx'), ['tools/sources.ts', '--check']],
  ['rules page is current', bin('tsx'), ['tools/rules.ts', '--check']],
  ['page of the proof checks is current', bin('tsx'), ['tools/proof-checks.ts', '--check']],
  ['the app’s glossary is current', bin('tsx'), ['tools/glossary.ts', '--check']],
  ['demo boats are current', bin('tsx'), ['tools/demo-boats/main.ts', '--check']],
]);
// stops with a sentence where it could not be built
build();
await forTests;
const browser = findTestBrowser();
if (browser === undefined) {
  stop(
    'The tests open the app in a browser and none was found; install Chromium or Chrome, or set CHROME_PATH to one.',
  );
}
vitest(browser);
process.stdout.write(`${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped\n`);
process.exit(counts.failed === 0 ? 0 : 1);
