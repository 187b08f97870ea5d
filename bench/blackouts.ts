import { readFileSync } from 'node:fs';
import { blackoutTable, type LaidBoat } from '../src/core/blackouts/blackout-table.ts';
import { indexBoat } from '../src/core/boat/boat-index.ts';
import { canonicalBoat } from '../src/core/boat/canonical-boat.ts';
import { lastPhase } from '../src/core/boat/phase.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { joinsOf } from '../src/core/joins/joins-of.ts';
import { planWith, withoutLateParts } from '../src/core/plan-with.ts';
import { arrivals } from '../src/core/readings/arrivals.ts';
import { refitOf } from '../src/core/readings/refit.ts';
import { busLoad } from '../src/core/traffic/bus-load.ts';

/** The whole blackout table of the largest boat, warm; and with readings and traffic, all three anew. */
const limits = { tableMs: 60, allThreeMs: 100 };
const runs = 40;
const warmUps = 20;

const boat = canonicalBoat(
  readBoat(readFileSync(new URL('../examples/bonxie/bonxie.boat.json', import.meta.url), 'utf8')),
);
const index = indexBoat(boat);
const phase = lastPhase(boat);
const joinsAt = (at: number) => joinsOf(index, at);
const { lines, joins, buses } = planWith(withoutLateParts)(boat, new Map());

/** Lines of their own, so that nothing kept from the run before is found. */
const laidAnew = (): LaidBoat => ({ index, lines: [...lines], joins, buses, joinsAt });

const medianMs = (work: () => void): number => {
  for (let run = 0; run < warmUps; run += 1) work();
  const times = Array.from({ length: runs }, () => {
    const started = performance.now();
    work();
    return performance.now() - started;
  });
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)] ?? 0;
};

const row = (what: string, ms: number, limitMs: number): void =>
  console.log(`${what.padEnd(58)} ${ms.toFixed(1).padStart(8)} ms   ${(ms / limitMs).toFixed(2)} of ${limitMs} ms`);

const refit = refitOf(index, joinsAt);
const reaches = refit.reachesIn(phase);
const { blackouts } = blackoutTable(laidAnew(), reaches, phase);
const failures = blackouts.reduce((sum, { also = [] }) => sum + 1 + also.length, 0);
console.log(`bonxie: ${boat.kit.length} units, ${boat.needs.length} needs, ${failures} single failures`);
row(
  'blackout table, everything laid anew, median',
  medianMs(() => blackoutTable(laidAnew(), reaches, phase)),
  limits.tableMs,
);
const kept = laidAnew();
row(
  'blackout table after an edit of a need, median',
  medianMs(() => blackoutTable(kept, reaches, phase)),
  limits.tableMs,
);
row(
  'readings, blackouts and traffic together, median',
  medianMs(() => {
    const anew = refitOf(index, joinsAt);
    arrivals(anew, phase);
    blackoutTable(laidAnew(), anew.reachesIn(phase), phase);
    for (const { id } of buses) busLoad(index, id, joinsAt(phase));
  }),
  limits.allThreeMs,
);
