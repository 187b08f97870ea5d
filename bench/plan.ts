import { readFileSync } from 'node:fs';
import { fullWork } from '../src/core/backbone/full-work.ts';
import { layoutProblems } from '../src/core/backbone/layout-problems.ts';
import type { Layout } from '../src/core/backbone/problem.ts';
import { solveLayout } from '../src/core/backbone/solve-layout.ts';
import type { Boat } from '../src/core/boat/boat-schema.ts';
import { applyEdit } from '../src/core/boat/history.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { startHistory } from '../src/core/boat/start-history.ts';
import { plan } from '../src/core/plan.ts';

/** Full re-plan after an edit with the layout kept, and the search for a layout, each beside its limit. */
const runs = 60;
const limits = { replanP95Ms: 16, firstLayoutMs: 100, lastLayoutMs: 300 };

/** A person edits for an hour, so the first runs, before the engine is warm, are not counted. */
const warmUps = 30;

const sortedMs = (work: () => void): number[] => {
  for (let run = 0; run < warmUps; run += 1) work();
  const times: number[] = [];
  for (let run = 0; run < runs; run += 1) {
    const started = performance.now();
    work();
    times.push(performance.now() - started);
  }
  return times.sort((a, b) => a - b);
};

/** One need after another wanted otherwise and back again: an edit that lays nothing anew. */
const needsEdited = (boat: Boat): (() => Boat) => {
  let history = startHistory(boat);
  let edits = 0;
  return () => {
    const need = history.boat.needs[edits % history.boat.needs.length];
    edits += 1;
    if (need !== undefined) history = applyEdit(history, 'change-need', { ...need, must: !need.must });
    return history.boat;
  };
};

/** A thing to buy ordered and then arrived: an edit that leaves the layout as it is, though all the rest is planned anew. */
const ordersEdited = (boat: Boat): (() => Boat) => {
  let history = startHistory(boat);
  let edits = 0;
  return () => {
    edits += 1;
    history = applyEdit(history, 'set-order', { item: 'feed-cable', state: 'ordered', supplier: `shop ${edits}` });
    return history.boat;
  };
};

const at = (times: readonly number[], share: number): number => times[Math.floor((times.length - 1) * share)] ?? 0;
const row = (what: string, ms: number, limitMs: number): void =>
  console.log(`${what.padEnd(58)} ${ms.toFixed(1).padStart(8)} ms   ${(ms / limitMs).toFixed(2)} of ${limitMs} ms`);

for (const name of ['gannet', 'wreck']) {
  const text = readFileSync(new URL(`../examples/${name}/${name}.boat.json`, import.meta.url), 'utf8');
  const boat = readBoat(text);
  const layouts = new Map<string, Layout>();
  let firstMs: number | undefined;
  const started = performance.now();
  for (const problem of layoutProblems(boat)) {
    for (const layout of solveLayout(problem, fullWork)) {
      firstMs ??= performance.now() - started;
      layouts.set(problem.hash, layout);
    }
  }
  const lastMs = performance.now() - started;
  const read = sortedMs(() => readBoat(text));
  row(`${name}: first usable layout`, firstMs ?? 0, limits.firstLayoutMs);
  row(`${name}: search to the end of the work budget`, lastMs, limits.lastLayoutMs);
  row(`${name}: reading the file, median`, at(read, 0.5), limits.replanP95Ms);
  for (const [what, nextBoat] of [
    ['a need', needsEdited(boat)],
    ['an order', ordersEdited(boat)],
  ] as const) {
    const replan = sortedMs(() => plan(nextBoat(), layouts));
    row(`${name}: edit of ${what} and re-plan, layout kept, median`, at(replan, 0.5), limits.replanP95Ms);
    row(`${name}: edit of ${what} and re-plan, layout kept, p95`, at(replan, 0.95), limits.replanP95Ms);
  }
}
