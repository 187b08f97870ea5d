import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { layoutProblems } from '../src/core/backbone/layout-problems.ts';
import { solveLayout } from '../src/core/backbone/solve-layout.ts';
import type { Boat } from '../src/core/boat/boat-schema.ts';
import { plausibleEdit } from '../src/core/boat/edits/plausible-edit.test-helper.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { writeBoat } from '../src/core/boat/write-boat.ts';
import { leadChoices } from '../src/core/leading/lead-choices.ts';
import { ledLine } from '../src/core/led-line.ts';
import { nearPlan, plan } from '../src/core/plan.ts';
import { planWith, withoutLateParts } from '../src/core/plan-with.ts';
import * as editor from '../src/web/workers/boat-editor.ts';
import type { KeptBoat } from '../src/web/workers/kept-boat.ts';
import { planningSession } from '../src/web/workers/planning-session.ts';
import type { Change } from '../src/web/workers/protocol.ts';
import { tell } from './figure.ts';
import { shareOf, workMs } from './own-ms.ts';

/**
 * A day of edits of one boat through what the app’s worker runs: edits at random, one in five taken back and one in ten made
 * again, each planned, kept and answered; and how much memory holds on to. The boat begins anew now and then, for edits at random
 * leave little of her. Arguments: edits, edits a boat.
 */
const [edits = 2000, editsABoat = 100] = process.argv.slice(2).map(Number);
const limits = { grownMb: 25, textKb: 4500 };

const text = readFileSync(new URL('../examples/sandpiper/sandpiper.boat.json', import.meta.url), 'utf8');

let boat: Boat = readBoat(text);
let kept: KeptBoat | undefined;
let faults = 0;
const hear = planningSession({
  engine: {
    readBoat,
    writeBoat,
    layoutProblems,
    solveLayout,
    quickPlan: planWith(withoutLateParts),
    nearPlan: async (...asked) => nearPlan(...asked),
    plan: async (...asked) => plan(...asked),
    titles: () => new Map(),
  },
  editor: () => Promise.resolve(editor),
  // a browser’s store holds one record a boat, written over each time
  keeper: {
    read: async () => undefined,
    setAside: async () => undefined,
    keep: async (one) => {
      kept = structuredClone(one);
    },
  },
  leader: () => Promise.resolve({ leadChoices, ledLine }),
  nowMs: () => performance.now(),
  pause: () => Promise.resolve(),
  post: (reply) => {
    if (reply.kind === 'answer') boat = structuredClone(reply).boat;
    if (reply.kind === 'fault') faults += 1;
  },
  budget: { work: 500 },
  patienceMs: 2000,
});

const heapMb = (): number => {
  globalThis.gc?.();
  return process.memoryUsage().heapUsed / 1e6;
};

const changeAt = (turn: number): Change => {
  if (turn % 5 === 4) return { kind: 'undo' };
  if (turn % 10 === 5) return { kind: 'redo' };
  const [call] = fc.sample(plausibleEdit(boat), { numRuns: 1, seed: turn });
  return { kind: 'edit', edits: call === undefined ? [] : [call] };
};

let opened = 0;
const heap: number[] = [];
const times: number[] = [];
for (let turn = 0; turn < edits; turn += 1) {
  if (turn % editsABoat === 0) {
    opened = turn * 2 + 1;
    await hear({ kind: 'plan', revision: opened, boatText: text, file: { key: 'sandpiper', tag: 'tag' } });
    heap.push(heapMb());
  }
  const started = performance.now();
  await hear({ kind: 'change', revision: turn * 2 + 2, opened, change: changeAt(turn) });
  times.push(performance.now() - started);
}
if (faults > 0) throw new Error(`${faults} edits broke the planner.`);
const [from, to] = [heap[Math.floor(heap.length / 4)] ?? 0, heap.at(-1) ?? 0];
const note = `${edits} edits; ${heap.map((mb) => mb.toFixed(0)).join(', ')} MB at the begin of each ${editsABoat}`;
tell({
  what: 'memory grown from the first quarter of the day to its end',
  value: to - from,
  unit: 'MB',
  limit: limits.grownMb,
  note,
});
tell({
  what: 'an edit at random answered, median',
  value: shareOf(times, 0.5),
  unit: 'ms',
  note: `p95 ${shareOf(times, 0.95).toFixed(0)} ms`,
});
const record = JSON.stringify(kept ?? {}).length / 1000;
tell({ what: 'the record of the boat as the browser keeps it', value: record, unit: 'kB', limit: limits.textKb });
tell({ what: 'written once', value: workMs(() => void structuredClone(kept)), unit: 'ms' });
