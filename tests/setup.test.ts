import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { get } from 'node:http';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { byCodeUnit } from '../src/core/boat/ids.ts';

const repository = resolve(import.meta.dirname, '..');
const main = join(repository, 'dist/cli/main.js');
let folder = '';

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fairlead-setup-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const fairlead = (args: string[], input = ''): { status: number | null; stdout: string; stderr: string } =>
  spawnSync(process.execPath, [main, ...args], { cwd: folder, encoding: 'utf8', input });

const expectOneSentence = (text: string): void => {
  expect(text.trim()).toMatch(/^[A-Z].*[.!]$/s);
  expect(text).not.toMatch(/\bat .*\.js:\d+|Error:|node:internal/);
};

test('an old Node is told so in one sentence', () => {
  const old = spawnSync(
    process.execPath,
    [
      '--input-type=module',
      '-e',
      "Object.defineProperty(process.versions, 'node', { value: '18.20.0' }); await import(process.argv[1]);",
      join(repository, 'tools/node-version.mjs'),
    ],
    { encoding: 'utf8' },
  );
  expect(old.status).toBe(2);
  expectOneSentence(old.stderr);
  expect(old.stderr).toContain('20.19');
});

describe('the server', () => {
  const start = (args: string[]): Promise<{ address: string; stop: () => void }> =>
    new Promise((done, fail) => {
      const child = spawn(process.execPath, [main, 'open', ...args], { cwd: folder });
      child.stdout.on('data', (data: Buffer) => {
        const address = /http:\/\/127\.0\.0\.1:\d+/.exec(String(data))?.[0];
        if (address !== undefined) done({ address, stop: () => child.kill() });
      });
      child.on('exit', (code) => fail(new Error(`ended with ${code}`)));
    });

  test('makes the usual folder with the demo boats and lists them', async () => {
    const { address, stop } = await start(['--port', '0']);
    const boats = (await (await fetch(`${address}/api/boats`)).json()) as { id: string; says: string }[];
    stop();
    expect(boats.map(({ id }) => id)).toEqual(readdirSync(join(repository, 'examples')).sort(byCodeUnit));
    expect(readdirSync(join(folder, 'boats'))).toContain('gannet.boat.json');
  });

  test('lists a file it cannot read with the reason, and gives no other file away', async () => {
    writeFileSync(join(folder, 'broken.boat.json'), '{');
    writeFileSync(join(folder, 'secret.txt'), 'secret');
    const { address, stop } = await start([folder, '--port', '0']);
    const boats = await (await fetch(`${address}/api/boats`)).json();
    const paths = [
      '/../secret.txt',
      '/%2e%2e/secret.txt',
      '/api/boats/..%2fsecret.txt',
      '/api/boats/secret.txt',
      '/package.json',
    ];
    const statuses = await Promise.all(paths.map(async (path) => (await fetch(address + path)).status));
    stop();
    expect(boats).toMatchObject([{ id: 'broken', says: expect.stringMatching(/\S/) }]);
    expect(statuses).toEqual(paths.map(() => 404));
  });

  test('answers only to its own address, and lets only its own pages write', async () => {
    const { address, stop } = await start([folder, '--port', '0']);
    const { hostname, port } = new URL(address);
    // fetch refuses to set Host, so the request is written by hand
    const foreign = await new Promise<number>((done) => {
      get({ hostname, port, path: '/api/boats', headers: { host: 'elsewhere.example' } }, (answer) => {
        answer.resume();
        done(answer.statusCode ?? 0);
      });
    });
    const written = (await fetch(`${address}/api/boats/x`, { method: 'PUT', body: 'x' })).status;
    const policy = (await fetch(address)).headers.get('content-security-policy') ?? '';
    stop();
    expect(foreign).toBe(403);
    expect(written).toBe(403);
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toContain('unsafe');
  });

  test('says in one sentence that its port is taken', async () => {
    const other = createServer();
    await new Promise<void>((done) => other.listen(0, '127.0.0.1', done));
    const at = other.address();
    const port = typeof at === 'object' && at !== null ? at.port : 0;
    const { status, stderr } = fairlead(['open', folder, '--port', String(port)]);
    other.close();
    expect(status).toBe(2);
    expectOneSentence(stderr);
    expect(stderr).toContain(String(port));
  });

  test('says in one sentence that a folder is none, or cannot be made', () => {
    writeFileSync(join(folder, 'boats'), 'a file in the way');
    for (const args of [
      ['open', 'nowhere'],
      ['open', 'boats'],
    ]) {
      const { status, stderr } = fairlead(args);
      expect(status).toBe(2);
      expectOneSentence(stderr);
    }
  });
});

describe('bad input at the terminal', () => {
  const boat = (text: string): string => {
    const path = join(folder, 'x.boat.json');
    writeFileSync(path, text);
    return path;
  };

  test.each([
    ['no such file', () => 'nowhere.boat.json'],
    ['a folder', () => folder],
    ['an empty file', () => boat('')],
    [
      'a picture',
      () => {
        writeFileSync(
          join(folder, 'x.png'),
          Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 255, 254]),
        );
        return join(folder, 'x.png');
      },
    ],
    ['not a number', () => boat('{ "format": "fairlead-boat", "version": NaN }')],
    ['another format', () => boat('{ "format": "something", "version": 1 }')],
    ['a newer version', () => boat('{ "format": "fairlead-boat", "version": 99 }')],
    ['a prototype key', () => boat('{ "format": "fairlead-boat", "version": 1, "__proto__": {} }')],
    ['nesting 200,000 deep', () => boat('['.repeat(200_000))],
    ['50 MB', () => boat(' '.repeat(50_000_000))],
  ])('%s: one clear sentence and exit code 2', (_, path) => {
    const { status, stdout, stderr } = fairlead(['plan', path()]);
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expectOneSentence(stderr);
    expect(stderr.length).toBeLessThan(900);
  });

  test('a wrong command names the nearest one', () => {
    const { status, stderr } = fairlead(['chek', 'x']);
    expect(status).toBe(2);
    expect(stderr).toContain('check');
  });

  test('a boat from standard input is read like a file', () => {
    const { status, stderr } = fairlead(['check', '-'], '{}');
    expect(status).toBe(2);
    expectOneSentence(stderr);
  });
});

describe('typical sheets at the terminal', () => {
  test('are found by what a person calls the unit, the best first, in 80 columns', () => {
    const { status, stdout, stderr } = fairlead(['sheets', 'thing', 'that', 'hears', 'ships']);
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(/^ais-class-b\n {2}AIS class B, 5 W, typical\n {2}says {3}.*AIS targets/);
    expect(stdout.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });

  test('come as JSON, and all of them without words', () => {
    const { status, stdout } = fairlead(['sheets', '--json']);
    const all: { id: string; says: string[] }[] = JSON.parse(stdout);
    expect(status).toBe(0);
    expect(all.length).toBeGreaterThanOrEqual(60);
    expect(all.find(({ id }) => id === 'rudder-sensor-bus')).toMatchObject({ says: ['rudder'], hears: [] });
  });

  test('that answer to no word give one sentence and exit code 1', () => {
    const { status, stdout } = fairlead(['sheets', 'xyzzy']);
    expect(status).toBe(1);
    expectOneSentence(stdout);
    expect(fairlead(['sheets', 'xyzzy', '--json'])).toMatchObject({ status: 1, stdout: '[]\n' });
  });
});
