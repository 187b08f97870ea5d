import { existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { commandLine } from '../src/cli/command-line.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { boatLog } from '../src/core/log/boat-log.ts';
import { readLog } from '../src/core/log/read-log.ts';
import type { Plan } from '../src/core/plan-shape.ts';

const repository = resolve(import.meta.dirname, '..');
const [before, home] = [process.cwd(), mkdtempSync(join(tmpdir(), 'fairlead-terminal-'))];

let [printed, told] = ['', ''];

beforeEach(() => {
  process.chdir(home);
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    printed += String(text);
    return true;
  });
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    told += String(text);
    return true;
  });
});
afterEach(() => {
  vi.restoreAllMocks();
  process.chdir(before);
  process.exitCode = undefined;
  rmSync(home, { recursive: true, force: true });
});

/** The words of a line typed at a shell: quotes keep several together. */
const typed = (line: string): string[] =>
  [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, kept, bare]) => kept ?? bare ?? '');

/** What is typed on a page, with the code each is said to end with. */
const commandsOf = (page: string): { readonly line: string; readonly code: number }[] =>
  [...page.matchAll(/```sh\n([\s\S]*?)```/g)]
    .flatMap(([, block = '']) => block.split('\n'))
    .filter((line) => line.startsWith('fairlead '))
    .map((line) => ({
      line: line.replace(/\s+#.*$/, ''),
      code: Number(/# ends with (\d)/.exec(line)?.[1] ?? 0),
    }));

test('the guide at the terminal leads from a hull pattern to the papers, command by command', {
  timeout: 180_000,
}, async () => {
  symlinkSync(join(repository, 'examples'), join(home, 'examples'));
  const commands = commandsOf(readFileSync(join(repository, 'docs/guide/at-the-terminal.md'), 'utf8'));
  expect(commands.length).toBeGreaterThan(30);
  const wide: string[] = [];
  for (const { line, code } of commands) {
    [printed, told, process.exitCode] = ['', '', 0];
    const cause: unknown = await commandLine
      .parseAsync(typed(line).slice(1), { from: 'user' })
      .catch((thrown: unknown) => thrown);
    expect([line, cause === commandLine ? process.exitCode : cause, told], line).toEqual([line, code, told]);
    wide.push(...printed.split('\n').filter((one) => one.length > 80 && !one.trimStart().startsWith('[')));
    if (/^fairlead (new --p|add|wire|cure .* \d)/.test(line))
      expect(told, line).toMatch(/Next.*: fairlead \w+ kittiwake/);
  }
  expect(wide).toEqual([]);
  const boat = readBoat(readFileSync('kittiwake.boat.json', 'utf8'));
  expect(boat.ways.filter(({ length }) => length.how === 'taped').map(({ id, length }) => [id, length.valueM])).toEqual(
    [
      ['w2', 2.794],
      ['w6', 7.1],
    ],
  );
  expect(boat.ways.find(({ id }) => id === 'w2')).toMatchObject({ known: 'pulled', bore: { mm: 25, how: 'taped' } });
  expect(boat.revisions?.map(({ mark }) => mark)).toEqual(['A', 'B']);
  expect(new Set(boat.orders?.map(({ state }) => state))).toEqual(new Set(['ordered', 'arrived']));
  expect(boat.accepted).toHaveLength(1);
  expect(boat.fitted).toMatchObject([{ id: 'd1', about: 'main-panel.screens', is: '7.5 A', by: 'the owner' }]);
  expect(boat.pins).toMatchObject({ fuses: { 'main-panel.screens': { ratingA: 7.5, state: 'fitted' } } });
  expect(boat.pins?.pieces).toBeUndefined();
  expect(boat.work?.starts).toEqual([{ phase: 1, on: '2027-03-31' }]);
  expect(readBoat(readFileSync('heard.boat.json', 'utf8')).proof?.proved.length).toBeGreaterThan(0);
  const log = readLog(readFileSync('kittiwake.log.jsonl', 'utf8'));
  expect(log.broken).toEqual([]);
  const { ticks, readings: found } = boatLog(log.entries);
  expect([...ticks.values()].map(({ done }) => done)).toEqual([true, false]);
  expect(ticks.get('job/survey')?.done).toBe(false);
  expect([...found.values()].map(({ value }) => value)).toEqual([60.4]);
  const { readings } = JSON.parse(readFileSync('papers/plan.json', 'utf8')) as Plan;
  expect(readings.length).toBeGreaterThan(6);
  expect(readings.every(({ arrives }) => arrives)).toBe(true);
  for (const name of ['papers/binder.pdf', 'papers/labels.pdf', 'quote/quote.pdf', 'aboard.pdf'])
    expect(existsSync(name), name).toBe(true);
});
