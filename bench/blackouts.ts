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
import { tell } from './figure.ts';
import { medianMs } from './median-ms.ts';

/** The whole blackout table of the largest boat, warm; and with readings and traffic, all three anew. */
const limits = { tableMs: 60, allThreeMs: 100 };

const boat = canonicalBoat(
  readBoat(readFileSync(new URL('../examples/bonxie/bonxie.boat.json', import.meta.url), 'utf8')),
);
const index = indexBoat(boat);
const phase = lastPhase(boat);
const joinsAt = (at: number) => joinsOf(index, at);
const { lines, joins, buses } = planWith(withoutLateParts)(boat, new Map());

/** Lines of their own, so that nothing kept from the run before is found. */
const laidAnew = (): LaidBoat => ({ index, lines: [...lines], joins, buses, joinsAt });

const note = `${boat.kit.length} units, ${boat.needs.length} needs of Bonxie`;
const row = (what: string, ms: number, limit: number): void => tell({ what, value: ms, unit: 'ms', limit, note });

const refit = refitOf(index, joinsAt);
const reaches = refit.reachesIn(phase);
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
