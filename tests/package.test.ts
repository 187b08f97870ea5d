import { type SpawnSyncReturns, spawn, spawnSync } from 'node:child_process';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';

const repository = resolve(import.meta.dirname, '..');
const example = (name: string): string => join(repository, `examples/${name}/${name}.boat.json`);

/** What a package may hold, each for its reason; anything else is in it by mistake. */
const lawful = [
  /^dist\/cli\/[\w-]+\.js$/,
  /^dist\/(cli|web|phone)\/licences\.md$/,
  /^dist\/library\/fairlead\.js$/,
  /^dist\/library\/types\/(core|library)\/[\w/-]+\.d\.ts$/,
  /^dist\/(web|phone)\/[\w./-]+\.(html|js|css|ttf|woff2|svg|png|ico|icc|webmanifest|json|txt|wasm)$/,
  /^examples\/[a-z]+\/[\w-]+\.(boat\.json|candump\.log)$/,
  /^schema\/(boat|plan)\.schema\.json$/,
  /^(LICENSE|NOTICE|README\.md|CHANGELOG\.md|package\.json)$/,
];
const needed = [
  'LICENSE',
  'NOTICE',
  'README.md',
  'CHANGELOG.md',
  'schema/boat.schema.json',
  'dist/cli/main.js',
  'dist/cli/boat-worker.js',
  'dist/web/index.html',
  'dist/cli/licences.md',
  'dist/web/licences.md',
  'dist/phone/licences.md',
  'examples/sandpiper/sandpiper.boat.json',
];
/** The whole is sent over a harbour’s wifi. */
const mostBytes = 8_000_000;

interface Packed {
  readonly filename: string;
  readonly size: number;
  readonly files: readonly { readonly path: string }[];
}

/** A program that is begun cold waits its turn on a machine where all tests run at once. */
const patient = { timeout: 120_000 };

let folder = '';
let packed: Packed;

const ran = (command: string, args: readonly string[], cwd = folder): SpawnSyncReturns<string> =>
  spawnSync(command, args, { cwd, encoding: 'utf8', maxBuffer: 64_000_000 });

const worked = (command: string, args: readonly string[], cwd = folder): string => {
  const { status, stdout, stderr } = ran(command, args, cwd);
  expect(status, `${command} ${args.join(' ')}\n${stderr}${stdout}`).toBe(0);
  return stdout;
};

const bin = (): string => join(folder, 'node_modules/fairlead/dist/cli/main.js');
const fairlead = (...args: string[]) => ran(process.execPath, [bin(), ...args]);

/** Puts a package that is here already where npm would install it. */
const link = (name: string): void => {
  const at = join(folder, 'node_modules', name);
  mkdirSync(dirname(at), { recursive: true });
  symlinkSync(join(repository, 'node_modules', name), at);
};

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'fairlead-package-'));
  const told = worked('npm', ['pack', '--json', '--ignore-scripts', '--pack-destination', folder], repository);
  [packed] = JSON.parse(told) as [Packed];
  mkdirSync(join(folder, 'node_modules/fairlead'), { recursive: true });
  worked('tar', ['xzf', packed.filename, '-C', 'node_modules/fairlead', '--strip-components=1']);
  const { dependencies } = JSON.parse(readFileSync(join(folder, 'node_modules/fairlead/package.json'), 'utf8')) as {
    dependencies: Record<string, string>;
  };
  // what the package asks for and nothing else: one it forgets to ask for is missing here as it would be anywhere
  for (const name of Object.keys(dependencies)) link(name);
  writeFileSync(join(folder, 'package.json'), '{ "name": "another-program", "type": "module", "private": true }');
}, patient.timeout);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('the package holds what runs, its data and its papers, and nothing else', () => {
  const paths = packed.files.map(({ path }) => path);
  expect(paths.filter((path) => !lawful.some((kind) => kind.test(path)))).toEqual([]);
  for (const path of needed) expect(paths).toContain(path);
  expect(packed.size).toBeLessThan(mostBytes);
});

/** The programs of docs/library.md, by the names that stand over them. */
const examplesInDocs = (): [name: string, code: string][] =>
  [
    ...readFileSync(join(repository, 'docs/library.md'), 'utf8').matchAll(
      /<!-- run by tests\/package\.test\.ts: (\w+\.ts) -->\n```ts\n([\s\S]*?)```/g,
    ),
  ].map(([, name = '', code = '']) => [name, code]);

test('another program imports it with its types, and plans the very bytes the command line prints', patient, () => {
  link('@types/node');
  mkdirSync(join(folder, 'src'));
  const programs = examplesInDocs();
  expect(programs.map(([name]) => name)).toEqual(['plan.ts', 'search.ts']);
  for (const [name, code] of programs) writeFileSync(join(folder, 'src', name), code);
  const wrong =
    "import { readBoat } from 'fairlead';\n// @ts-expect-error a boat has no such measure\nreadBoat('').hull.lengthFt;\n";
  writeFileSync(join(folder, 'src/wrong.ts'), wrong);
  const compilerOptions = {
    ...{ strict: true, target: 'es2023', module: 'nodenext', types: ['node'] },
    ...{ rootDir: 'src', outDir: 'out', skipLibCheck: true, exactOptionalPropertyTypes: true },
  };
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify({ compilerOptions, include: ['src'] }));
  worked(join(repository, 'node_modules/.bin/tsc'), ['-p', '.']);
  const planned = worked(process.execPath, ['out/plan.js', example('sandpiper')]);
  expect(planned.length).toBeGreaterThan(100_000);
  expect(planned === fairlead('plan', example('sandpiper'), '--json').stdout).toBe(true);
  expect(worked(process.execPath, ['out/search.js', example('sandpiper')])).toMatch(
    /^nav: \w+, costs \d+, none costs less than \d+\n[\s\S]*23 of 23 readings arrive\.\n$/,
  );
  writeFileSync(join(folder, 'broken.txt'), '{');
  expect(ran(process.execPath, ['out/plan.js', 'broken.txt'])).toMatchObject({ status: 2, stdout: '' });
});

test('the library asks nothing of Node, so that a page can import it too', () => {
  const text = readFileSync(join(folder, 'node_modules/fairlead/dist/library/fairlead.js'), 'utf8');
  const imported = [...text.matchAll(/^(?:import|export)[^'"]*?from ['"]([^'"]+)['"]/gm)].map(([, name = '']) => name);
  expect(imported.length).toBeGreaterThan(2);
  const declared = readFileSync(join(folder, 'node_modules/fairlead/package.json'), 'utf8');
  for (const name of imported)
    expect(declared).toContain(
      `"${name
        .split('/')
        .slice(0, name.startsWith('@') ? 2 : 1)
        .join('/')}":`,
    );
  expect(text).not.toMatch(/\bprocess\.|\brequire\(|from ['"]node:/);
});

test('the installed program makes a boat, checks her and writes her papers', patient, () => {
  const tern = 'tern.boat.json';
  expect(fairlead('new', '--pattern', 'ketch', '--length', '11', '--name', 'Tern', '--out', tern).status).toBe(0);
  expect(fairlead('check', tern)).toMatchObject({ status: 0, stdout: expect.stringContaining('DOUBTS') });
  expect(fairlead('plan', tern, '--out', 'papers').status).toBe(0);
  for (const name of ['binder.pdf', 'plan.json', 'lists.xlsx', 'drawings']) {
    expect(existsSync(join(folder, 'papers', name)), name).toBe(true);
  }
  expect(fairlead('--version').stdout.trim()).toBe(
    (JSON.parse(readFileSync(join(repository, 'package.json'), 'utf8')) as { version: string }).version,
  );
});

test('without the library that reads serial ports a sentence says what to install, and all else works', () => {
  expect(existsSync(join(folder, 'node_modules/serialport'))).toBe(false);
  const { status, stdout, stderr } = fairlead('listen', example('sandpiper'), '--serial', '/dev/ttyUSB0');
  expect([status, stdout]).toEqual([2, '']);
  expect(stderr).toMatch(
    /^The library that reads serial ports is not installed here\. .*npm install serialport@\S+\n$/,
  );
});

const manyBoats = 16;

/** A folder of boats that are quickly checked. */
const folderOfBoats = (name: string): string => {
  const boats = join(folder, name);
  mkdirSync(boats);
  const [first, ...others] = Array.from({ length: manyBoats }, (_, at) => join(boats, `b${at}.boat.json`));
  fairlead('new', '--pattern', 'ketch', '--length', '9', '--out', first ?? '');
  for (const file of others) copyFileSync(first ?? '', file);
  return boats;
};

test(
  'many boats are checked in real threads, the same bytes from one as from three, and Ctrl-C ends them cleanly',
  patient,
  async () => {
    const boats = folderOfBoats('many');
    const sound = fairlead('check', boats, '--json', '--threads', '1');
    expect([sound.status, sound.stderr]).toEqual([0, '']);
    expect((JSON.parse(sound.stdout) as unknown[]).length).toBe(manyBoats);
    expect(fairlead('check', boats, '--json', '--threads', '3').stdout).toBe(sound.stdout);
    writeFileSync(join(boats, 'a.boat.json'), '{');
    const child = spawn(process.execPath, [bin(), 'check', boats, '--json', '--threads', '1'], { cwd: folder });
    let [out, said] = ['', ''];
    child.stdout.on('data', (text: Buffer) => {
      if (out === '') child.kill('SIGINT');
      out += text.toString();
    });
    child.stderr.on('data', (text: Buffer) => {
      said += text.toString();
    });
    const code = await new Promise((done) => child.once('close', done));
    const [refused, ...checked] = JSON.parse(out) as { refused?: string }[];
    expect(refused?.refused).toContain('a.boat.json');
    expect(checked.length).toBeLessThan(manyBoats);
    expect(said).toMatch(/Stopped: \d+ of 17 boats were not looked at\./);
    expect(code).toBe(130);
  },
);

test('the installed program serves the app and its boats', patient, async () => {
  const child = spawn(process.execPath, [bin(), 'open', '--port', '0'], { cwd: folder });
  try {
    const address = await new Promise<string>((done, fail) => {
      child.stdout.on('data', (text: Buffer) => {
        const found = /http:\/\/127\.0\.0\.1:\d+/.exec(String(text))?.[0];
        if (found !== undefined) done(found);
      });
      child.once('exit', (code) => fail(new Error(`ended with ${code}`)));
    });
    expect(await (await fetch(address)).text()).toContain('<div id=');
    const boats = (await (await fetch(`${address}/api/boats`)).json()) as { id: string }[];
    expect(boats.map(({ id }) => id)).toContain('sandpiper');
  } finally {
    child.kill();
  }
});
