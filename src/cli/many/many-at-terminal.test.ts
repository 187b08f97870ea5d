import { EventEmitter } from 'node:events';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { tempFolder } from '../../node/files/temp-folder.test-helper.ts';
import { check } from '../commands/check.ts';
import { newBoat } from '../commands/new.ts';
import { plan } from '../commands/plan.ts';
import type { BoatTask, ManyWish } from './boat-task.ts';
import { doBoat } from './do-boat.ts';
import { manyAtTerminal } from './many-at-terminal.ts';
import type { Thread } from './share-out.ts';

let printed = '';
let told = '';

beforeEach(() => {
  [printed, told] = ['', ''];
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    told += String(text);
    return true;
  });
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    printed += String(text);
    return true;
  });
});
afterEach(() => {
  vi.restoreAllMocks();
  process.exitCode = undefined;
});

/** Does a thread's work in this one; a boat called doomed is its end. Real threads are seen at the program as it is installed. */
class NoThread extends EventEmitter implements Thread {
  readonly #wish: ManyWish;
  constructor(wish: ManyWish) {
    super();
    this.#wish = wish;
  }
  postMessage(task: BoatTask): void {
    if (task.file.includes('doomed')) setImmediate(() => this.emit('exit', 1));
    else void doBoat(task, this.#wish).then((answer) => this.emit('message', answer));
  }
  ref(): void {}
  terminate(): void {
    this.emit('exit', 0);
  }
}
const begin = (wish: ManyWish): Thread => new NoThread(wish);

const aBoatAt = (out: string): Promise<void> => newBoat({ pattern: 'ketch', length: '11', name: 'Tern', out });

/** A folder with a boat file, one that cannot be read, one deeper down, and what is none. */
const aFolder = async (): Promise<string> => {
  const folder = tempFolder();
  mkdirSync(join(folder, 'b', 'deep'), { recursive: true });
  mkdirSync(join(folder, 'tern.backups'));
  writeFileSync(join(folder, 'tern.backups', 'old.boat.json'), '{');
  writeFileSync(join(folder, 'a.boat.json'), '{ "format": "fairlead-boat", ');
  writeFileSync(join(folder, 'notes.json'), '{}');
  await aBoatAt(join(folder, 'b', 'deep', 'skua.boat.json'));
  await aBoatAt(join(folder, 'tern.boat.json'));
  [printed, told] = ['', ''];
  return folder;
};

test('all boats of a folder are done though one cannot be read, in one order whatever the number of threads', async () => {
  const folder = await aFolder();
  await manyAtTerminal([folder], { of: 'check', json: true }, { threads: 1 }, begin);
  const alone = printed;
  expect(process.exitCode).toBe(2);
  printed = '';
  await manyAtTerminal([folder, folder], { of: 'check', json: true }, { threads: 3 }, begin);
  expect(printed).toBe(alone);
  const objects = JSON.parse(alone) as { file: string; boat?: string; findings?: unknown[]; refused?: string }[];
  expect(objects.map(({ file, boat }) => [file.slice(folder.length + 1), boat])).toEqual([
    ['a.boat.json', undefined],
    [join('b', 'deep', 'skua.boat.json'), 'Tern'],
    ['tern.boat.json', 'Tern'],
  ]);
  expect(objects[0]?.refused).toContain(`of ${join(folder, 'a.boat.json')}`);
  expect(told).toContain('The file ends in the middle');
  [printed, process.exitCode] = ['', undefined];
  await check([join(folder, 'tern.boat.json')], { json: true });
  expect(objects[2]?.findings).toEqual(JSON.parse(printed));
});

test('a thread that dies under a boat is told of, and the others are done', async () => {
  const folder = await aFolder();
  await aBoatAt(join(folder, 'b', 'doomed.boat.json'));
  printed = '';
  await manyAtTerminal([join(folder, 'b')], { of: 'check', json: false }, { threads: 1, times: true }, begin);
  expect(told).toMatch(/The thread that planned this boat came to an end\. At .*doomed/);
  expect(printed).toMatch(/deep\/skua +- +- +3 .*\ndoomed +not read\n/);
  expect(printed).toContain('2 boats: none with a danger or a fault, 1 not read.');
  expect(process.exitCode).toBe(2);
});

test('the papers of each of many boats are those she gets alone', async () => {
  const folder = await aFolder();
  const [tern, papers] = [join(folder, 'tern.boat.json'), { date: '2026-11-26' }];
  const out = join(folder, 'papers');
  await manyAtTerminal([tern, join(folder, 'a.boat.json')], { of: 'plan', json: false, papers }, { out }, begin);
  expect(process.exitCode).toBe(2);
  expect(printed).toMatch(/tern +- +- .*0\/0 +0\.00 EUR/);
  await plan([tern], { out: join(folder, 'alone'), date: '2026-11-26' });
  for (const name of ['plan.json', 'binder.pdf', 'lists.json', 'boat.svg']) {
    const own = readFileSync(join(out, 'tern', name));
    expect(own.equals(readFileSync(join(folder, 'alone', name))), name).toBe(true);
  }
});

test('what cannot be done for many is refused in a sentence before any boat is begun', async () => {
  const folder = await aFolder();
  await expect(plan([folder], { issue: 'For the yard.', date: '2026-11-26' })).rejects.toThrow(
    '--issue is for one boat',
  );
  await expect(plan([folder], { out: folder, paper: 'a5' })).rejects.toThrow('no paper “a5”');
  await expect(check(['-', folder], {})).rejects.toThrow('not one among several');
  mkdirSync(join(folder, 'empty'));
  await expect(check([join(folder, 'empty')], {})).rejects.toThrow('no boat file in this folder');
});
