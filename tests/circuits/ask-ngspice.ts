import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Circuit, CircuitVolts } from './circuit.ts';
import { readRawFile } from './raw-file.ts';
import { type SpiceDeck, spiceDeck } from './spice-deck.ts';

/** Debian's package ngspice: a circuit simulator that knows nothing of trees, ladders or constant power. */
export const hasNgspice = spawnSync('which', ['ngspice']).status === 0;

/** Steps in which loads grow to what they are; a power of two, so that every share is exact. */
export const steps = 16;

/** What a simulator says of a circuit at every step, from no load to all of it: the volts, or nothing from where it fell. */
export type Followed = readonly (CircuitVolts | undefined)[];

const followed = ({ nodes, alive }: SpiceDeck, values: ReadonlyMap<string, readonly number[]>): Followed => {
  const at = (node: string, step: number): number => {
    const volts = values.get(`v(${node})`)?.[step];
    if (volts === undefined) throw new Error(`The simulator gives no volts at ${node}, step ${step}.`);
    return volts;
  };
  return Array.from({ length: steps + 1 }, (_, step) =>
    alive.every(({ node, aboveV }) => at(node, step) > aboveV)
      ? nodes.map((names) => new Map([...names].map(([ours, theirs]) => [ours, at(theirs, step)])))
      : undefined,
  );
};

/** Asks one run of the simulator about all circuits, each with its loads growing from nothing to what they are. */
export const askNgspice = (circuits: readonly Circuit[]): Followed[] => {
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-circuits-'));
  try {
    const decks = circuits.map((circuit, n) => spiceDeck(String(n), circuit));
    const commands = decks.flatMap(({ text }, n) => {
      writeFileSync(join(folder, `${n}.cir`), text);
      return [`source ${n}.cir`, `dc vshare 0 1 ${1 / steps}`, 'write all.raw', 'destroy all', 'remcirc'];
    });
    const input = ['set appendwrite', ...commands, 'quit', ''].join('\n');
    const done = spawnSync('ngspice', ['-n', '-p'], { cwd: folder, input, encoding: 'utf8', maxBuffer: 1 << 28 });
    if (done.status !== 0) throw new Error(`The simulator gave up: ${done.stderr}`);
    const plots = new Map(
      readRawFile(readFileSync(join(folder, 'all.raw'))).map(({ title, values }) => [title, values]),
    );
    return decks.map((deck, n) => {
      const values = plots.get(String(n));
      if (values === undefined) throw new Error(`No answer about circuit ${n}: ${done.stderr}`);
      return followed(deck, values);
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
};
