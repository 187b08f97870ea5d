import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { aBoat } from '../../src/core/boat/a-boat.test-helper.ts';
import { addPlace } from '../../src/core/boat/edits/add-place.ts';
import { readBoat } from '../../src/core/boat/read-boat.ts';
import { writeBoat } from '../../src/core/boat/write-boat.ts';

const program = join(import.meta.dirname, '../../dist/cli/main.js');

/** The built program, with what it says and how it ends. */
const typed = (...line: readonly string[]) => {
  const child = spawn(process.execPath, [program, ...line]);
  let told = '';
  const hear = (chunk: Buffer): void => {
    told += chunk.toString();
  };
  child.stdout.on('data', hear);
  child.stderr.on('data', hear);
  const ended = once(child, 'close').then(([code]) => ({ code: Number(code), told }));
  return { child, ended, told: () => told };
};

/** `fairlead open` on a folder; gives where it is once it says so. */
const opened = async (folder: string): Promise<string> => {
  const { child, ended, told } = typed('open', folder, '--port', '0');
  onTestFinished(() => void child.kill());
  while (!told().includes('127.0.0.1')) {
    await Promise.race([once(child.stdout, 'data'), ended.then(() => Promise.reject(new Error(told())))]);
  }
  return /http:\/\/127\.0\.0\.1:\d+/.exec(told())?.[0] ?? '';
};

interface Save {
  readonly parent: string;
  readonly child: string;
}

/** What becomes of all saves of one run. */
interface Told {
  readonly saves: Save[];
  readonly refusals: string[];
  readonly wrong: string[];
}

/** A page of one of the servers that puts places aboard, as the app does: what was refused is put on the boat as she is then. */
const page = (address: string, told: Told) => {
  const at = `${address}/api/boats/tern`;
  const read = async () => {
    const answer = await fetch(at);
    return { text: await answer.text(), tag: answer.headers.get('etag') ?? '' };
  };
  /** false where the boat was another by then */
  const put = async (place: string, { text, tag }: { text: string; tag: string }): Promise<boolean> => {
    const boat = readBoat(text);
    const [like] = boat.places;
    if (like === undefined) throw new Error('the boat has no place');
    const body = writeBoat(addPlace.apply(boat, { ...like, id: place }));
    const headers = { origin: address, 'content-type': 'application/json', 'if-match': tag };
    const answer = await fetch(at, { method: 'PUT', body, headers });
    // reason: a refusal holds words
    const { says = '' } = (await answer.json()) as { says?: string };
    if (answer.status === 200) told.saves.push({ parent: tag, child: answer.headers.get('etag') ?? '' });
    else if (answer.status === 412) told.refusals.push(says);
    else told.wrong.push(`${answer.status} ${says}`);
    return answer.status === 200;
  };
  const putUntilSaved = async (place: string): Promise<void> => {
    for (let tries = 0; tries < 200; tries += 1) if (await put(place, await read())) return;
    told.wrong.push(`${place} was never saved`);
  };
  return { read, put, putUntilSaved };
};

/** A command typed again for as long as the file is changed under it. */
const typedUntilSaved = async (told: Told, ...line: readonly string[]): Promise<void> => {
  for (let tries = 0; tries < 20; tries += 1) {
    const { code, told: says } = await typed(...line).ended;
    if (code === 0) return;
    if (code === 2) told.refusals.push(says);
    else told.wrong.push(`${code} ${says}`);
  }
  told.wrong.push(`${line.join(' ')} never came through`);
};

test('two servers and a terminal at one boat lose nothing, and whoever comes second is told', {
  timeout: 120_000,
}, async () => {
  if (!existsSync(program)) throw new Error('The program is not built: run npm run build first.');
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-two-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const path = join(folder, 'tern.boat.json');
  const boat = aBoat().boat;
  writeFileSync(path, writeBoat(boat));
  const told: Told = { saves: [], refusals: [], wrong: [] };
  const addresses = await Promise.all([opened(folder), opened(folder)]);
  const [one, other] = addresses.map((address) => page(address, told));
  if (one === undefined || other === undefined) return;

  // both on the very same boat: one is saved, the other is told and finds the newer boat
  const seen = await Promise.all([one.read(), other.read()]);
  const first = await Promise.all([one.put('of-one', seen[0]), other.put('of-other', seen[1])]);
  expect(first.toSorted()).toEqual([false, true]);
  const [winner, loser] = first[0] ? (['of-one', other] as const) : (['of-other', one] as const);
  expect((await loser.read()).text).toContain(`"${winner}"`);
  await loser.putUntilSaved(first[0] ? 'of-other' : 'of-one');

  // all at once, as fast as they can
  const places = addresses.flatMap((_, server) => [0, 1].map((tab) => ({ server, tab })));
  const wanted = places.flatMap(({ server, tab }) =>
    Array.from({ length: 12 }, (_, at) => `at-${server}-${tab}-${at}`),
  );
  const [way] = boat.ways;
  await Promise.all([
    ...places.map(async ({ server, tab }) => {
      const own = server === 0 ? one : other;
      for (const place of wanted.filter((id) => id.startsWith(`at-${server}-${tab}-`))) await own.putUntilSaved(place);
    }),
    typedUntilSaved(told, 'tape', path, way?.id ?? '', '7.77'),
    typedUntilSaved(told, 'add', path, 'depth', '--name', 'The new sounder'),
  ]);

  expect(told.wrong).toEqual([]);
  const after = readBoat(readFileSync(path, 'utf8'));
  const ids = after.places.map(({ id }) => id);
  expect([...wanted, 'of-one', 'of-other'].filter((id) => ids.filter((known) => known === id).length !== 1)).toEqual(
    [],
  );
  expect(after.ways.find(({ id }) => id === way?.id)?.length.valueM).toBe(7.77);
  expect(after.kit.some(({ name }) => name === 'The new sounder')).toBe(true);
  // each save stands on one before it and no two on the same: they were made in some order, one after the other
  expect(new Set(told.saves.map(({ parent }) => parent)).size).toBe(told.saves.length);
  const parents = new Set(told.saves.map(({ parent }) => parent));
  const ends = told.saves.filter(({ child }) => !parents.has(child)).map(({ child }) => child);
  // the two saves of the terminal tell no hash, and a chain may end before each
  expect(ends.length).toBeLessThanOrEqual(3);
  expect(told.refusals.length).toBeGreaterThan(0);
  expect(told.refusals.filter((says) => !/changed by something else since it was opened/.test(says))).toEqual([]);
  expect(readdirSync(folder, { recursive: true }).filter((name) => /fairlead/.test(String(name)))).toEqual([]);
});
