import { readFileSync } from 'node:fs';
import { indexBoat } from '../src/core/boat/boat-index.ts';
import { lastPhase } from '../src/core/boat/phase.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { joinsOf } from '../src/core/joins/joins-of.ts';
import { plan } from '../src/core/plan.ts';
import { arrivals } from '../src/core/readings/arrivals.ts';
import { refitOf } from '../src/core/readings/refit.ts';
import { planSources } from '../src/core/sources/plan-sources.ts';
import { tell } from './figure.ts';
import { medianMs } from './median-ms.ts';

/** The source plan and the table of settings of the largest demo boat, beside following its readings and beside a limit. */
const limitMs = 15;

const boat = readBoat(readFileSync(new URL('../examples/bonxie/bonxie.boat.json', import.meta.url), 'utf8'));
const index = indexBoat(boat);
const phase = lastPhase(boat);
const joins = joinsOf(index, phase);
const { lines, isolation } = plan(boat, new Map());
const refit = refitOf(index, (at) => joinsOf(index, at));
const reaches = refit.reachesIn(phase);

const peer = medianMs(() => void arrivals(refit, phase));
const own = medianMs(() => void planSources({ reaches, joins, lines, shields: isolation.shields }));
tell({
  what: 'sources, numbers, settings, pairs of Bonxie, median',
  value: own,
  unit: 'ms',
  limit: limitMs,
  beside: [{ name: 'what arrives where', value: peer }],
  note: `${boat.kit.length} units, ${boat.needs.length} needs`,
});
