import { readFileSync } from 'node:fs';
import { fullWork } from '../src/core/backbone/full-work.ts';
import { layoutProblems } from '../src/core/backbone/layout-problems.ts';
import type { Layout, LayoutMap } from '../src/core/backbone/problem.ts';
import { solveLayout } from '../src/core/backbone/solve-layout.ts';
import type { Boat } from '../src/core/boat/boat-schema.ts';
import { applyEdit } from '../src/core/boat/history.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { startHistory } from '../src/core/boat/start-history.ts';
import { plan } from '../src/core/plan.ts';
import { tell } from './figure.ts';
import { largeBoat } from './large-boat.ts';
import { shareOf, workMs } from './own-ms.ts';

/** Full re-plan after an edit with the layout kept, and the search for a layout, each beside its limit. */
interface Replanned {
  readonly limit: number;
  readonly stretch: number;
  readonly runs: number;
  /** a person edits for an hour, so the first runs, before the engine is warm, are not counted */
  readonly warmUps: number;
}
const ofSize = {
  usual: { limit: 16, stretch: 8, runs: 200, warmUps: 60 },
  large: { limit: 150, stretch: 60, runs: 40, warmUps: 15 },
} as const;

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

/** One need after another taken out and then put back. */
const needsGone = (boat: Boat): (() => Boat) => {
  let history = startHistory(boat);
  let edits = 0;
  return () => {
    const need = boat.needs[Math.floor(edits / 2) % boat.needs.length];
    if (need !== undefined)
      history =
        edits % 2 === 0
          ? applyEdit(history, 'remove-need', {
              reading: need.reading,
              at: need.at,
              ...(need.instance === undefined ? {} : { instance: need.instance }),
            })
          : applyEdit(history, 'add-need', need);
    edits += 1;
    return history.boat;
  };
};

/** A thing to buy ordered of one shop after another: an edit that leaves the layout as it is. */
const ordersEdited = (boat: Boat): (() => Boat) => {
  let history = startHistory(boat);
  let edits = 0;
  return () => {
    edits += 1;
    history = applyEdit(history, 'set-order', { item: 'feed-cable', state: 'ordered', supplier: `shop ${edits}` });
    return history.boat;
  };
};

/** One unit after another named otherwise: an edit of what is aboard, after which all of the boat is laid anew. */
const unitsEdited = (boat: Boat): (() => Boat) => {
  let history = startHistory(boat);
  let edits = 0;
  return () => {
    const unit = history.boat.kit[edits % history.boat.kit.length];
    edits += 1;
    if (unit !== undefined) history = applyEdit(history, 'name-unit', { unit: unit.id, name: `Unit ${edits}` });
    return history.boat;
  };
};

const replanned = (
  what: string,
  nextBoat: () => Boat,
  layouts: LayoutMap,
  { runs, warmUps, ...bounds }: Replanned,
): void => {
  const work = (): void => void plan(nextBoat(), layouts);
  for (let run = 0; run < warmUps; run += 1) work();
  const times = Array.from({ length: runs }, () => workMs(work));
  const note = `${runs} edits, median ${shareOf(times, 0.5).toFixed(1)} ms`;
  tell({ what: `${what}, p95`, value: shareOf(times, 0.95), unit: 'ms', ...bounds, note });
};

/** The layouts of a boat, with how long the search took to the first and to the last. */
const laid = (boat: Boat): { layouts: ReadonlyMap<string, Layout>; firstMs: number; lastMs: number } => {
  const layouts = new Map<string, Layout>();
  let firstMs = 0;
  const lastMs = workMs(() => {
    for (const problem of layoutProblems(boat)) {
      const search = solveLayout(problem, fullWork);
      const keep = ({ value, done }: IteratorResult<Layout>): boolean => {
        if (done !== true) layouts.set(problem.hash, value);
        return done !== true;
      };
      firstMs += workMs(() => void keep(search.next()));
      while (keep(search.next()));
    }
  });
  return { layouts, firstMs, lastMs };
};

// the limits for usual boats are said of some 25 units: one demo boat has fewer, the next more
for (const name of ['sandpiper', 'gannet', 'wreck']) {
  const text = readFileSync(new URL(`../examples/${name}/${name}.boat.json`, import.meta.url), 'utf8');
  const boat = readBoat(text);
  const { layouts, firstMs, lastMs } = laid(boat);
  tell({ what: `${name}: first usable layout of every bus, cold`, value: firstMs, unit: 'ms', limit: 100 });
  tell({ what: `${name}: search to the end of the work budget`, value: lastMs, unit: 'ms', limit: 300 });
  const size = name === 'wreck' ? ofSize.large : ofSize.usual;
  const beside = `${boat.kit.length} units`;
  replanned(`${name}, ${beside}: a need edited and planned anew`, needsEdited(boat), layouts, size);
  replanned(`${name}, ${beside}: a need taken out or put back and planned anew`, needsGone(boat), layouts, size);
  replanned(`${name}, ${beside}: an order edited and planned anew`, ordersEdited(boat), layouts, size);
  replanned(`${name}, ${beside}: a unit edited and planned anew`, unitsEdited(boat), layouts, {
    ...size,
    runs: 40,
    warmUps: 20,
  });
}
const many = largeBoat(500);
replanned('500 devices on ten buses: an order edited and planned anew', ordersEdited(many), new Map(), ofSize.large);
