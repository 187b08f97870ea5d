import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Boat } from '../src/core/boat/boat-schema.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { writeBoat } from '../src/core/boat/write-boat.ts';
import { boatFromPattern } from '../src/core/starting/boat-from-pattern.ts';
import { boatPatterns as patterns } from '../src/core/starting/patterns/index.ts';
import { tell } from './figure.ts';

/**
 * Many boats checked by the built command, from a cold start: boats a second in as many threads as there are cores beside
 * one thread on the first of the same boats in the same run, and the most memory the whole program took. Arguments: boats
 * in all, boats for the one thread.
 */
const [count = 1000, countAlone = 100] = process.argv.slice(2).map(Number);

const root = fileURLToPath(new URL('..', import.meta.url));

const demo = (name: string): Boat => readBoat(readFileSync(join(root, `examples/${name}/${name}.boat.json`), 'utf8'));
const demos = [demo('sandpiper'), demo('gannet')] as const;

/** A boat like one there is, but of other lengths and with one need less: every one is another question to the search. */
const varied = (boat: Boat, turn: number): Boat => {
  const factor = 0.8 + (turn % 401) / 1000;
  const long = (m: number): number => Math.round(m * factor * 1000) / 1000;
  return {
    ...boat,
    name: `${boat.name} ${turn}`,
    places: boat.places.map((place) => ({ ...place, xM: long(place.xM), yM: long(place.yM), zM: long(place.zM) })),
    ways: boat.ways.map((way) => ({ ...way, length: { ...way.length, valueM: long(way.length.valueM) } })),
    needs: boat.needs.filter((_, at) => at !== turn % boat.needs.length),
  };
};

/** Of five boats two are like the one demo boat, two like the other, and one is a hull pattern as it begins. */
const boatOf = (turn: number): Boat => {
  const own = demos[turn % 5 < 2 ? 0 : 1];
  if (turn % 5 < 4) return varied(own, turn);
  const pattern = patterns[turn % patterns.length] ?? patterns[0];
  if (pattern === undefined) throw new Error('There is no hull pattern.');
  return boatFromPattern({ pattern: pattern.id, name: `${pattern.id} ${turn}` });
};

/** The most memory a process took until now, MB; Linux tells it. */
const peakMb = (pid: number): number => {
  try {
    return Number(/VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0) / 1024;
  } catch {
    return 0;
  }
};

const checked = (folder: string, threads: number): Promise<{ seconds: number; megabytes: number; boats: number }> =>
  new Promise((done) => {
    const started = performance.now();
    const args = [join(root, 'dist/cli/main.js'), 'check', folder, '--json', '--threads', String(threads)];
    const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] });
    let [megabytes, boats] = [0, 0];
    child.stdout.on('data', (text: Buffer) => {
      boats += text.toString().split('\n{').length - 1;
    });
    const look = setInterval(() => {
      megabytes = Math.max(megabytes, peakMb(child.pid ?? 0));
    }, 100);
    child.once('close', () => {
      clearInterval(look);
      done({ seconds: (performance.now() - started) / 1000, megabytes, boats });
    });
  });

const folder = mkdtempSync(join(tmpdir(), 'fairlead-bench-'));
try {
  const [all, few] = [join(folder, 'all'), join(folder, 'few')];
  for (const one of [all, few]) mkdirSync(one);
  for (let turn = 0; turn < count; turn += 1) {
    const [name, text] = [`boat-${String(turn).padStart(4, '0')}.boat.json`, writeBoat(boatOf(turn))];
    writeFileSync(join(all, name), text);
    if (turn < countAlone) writeFileSync(join(few, name), text);
  }
  const threads = availableParallelism();
  const together = await checked(all, threads);
  const alone = await checked(few, 1);
  const [rate, rateAlone] = [count / together.seconds, countAlone / alone.seconds];
  if (together.boats !== count || alone.boats !== countAlone) throw new Error('Not every boat was checked.');
  const mb = (of: { readonly megabytes: number }): string => `${Math.round(of.megabytes)} MB at most`;
  tell({
    what: `${count} boats checked from a cold start, ${threads} threads`,
    value: rate,
    unit: 'boats/s',
    more: true,
    beside: [{ name: `one thread on ${countAlone} of them`, value: rateAlone }],
    note: `${mb(together)}, one thread ${mb(alone)}`,
  });
} finally {
  rmSync(folder, { recursive: true });
}
