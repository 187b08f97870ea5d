import { readFileSync } from 'node:fs';
import { indexBoat } from '../src/core/boat/boat-index.ts';
import { lastPhase } from '../src/core/boat/phase.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { joinsOf } from '../src/core/joins/joins-of.ts';
import { planTraffic } from '../src/core/plan-traffic.ts';
import { arrivals } from '../src/core/readings/arrivals.ts';
import { refitOf } from '../src/core/readings/refit.ts';
import { tell } from './figure.ts';
import { medianMs } from './median-ms.ts';

/** The traffic of the largest demo boat, beside following its readings and beside a limit. */
const limitMs = 20;

const boat = readBoat(readFileSync(new URL('../examples/bonxie/bonxie.boat.json', import.meta.url), 'utf8'));
const index = indexBoat(boat);
const phase = lastPhase(boat);
const joins = joinsOf(index, phase);

const peer = medianMs(
  () =>
    void arrivals(
      refitOf(index, (at) => joinsOf(index, at)),
      phase,
    ),
);
const own = medianMs(() => void planTraffic({ index, joins }));
const { buses, lines } = planTraffic({ index, joins }).traffic;
const messages = buses.flatMap(({ senders }) => senders.flatMap((sender) => sender.messages)).length;
tell({
  what: 'traffic of Bonxie: loads, waits, bursts, lines, median',
  value: own,
  unit: 'ms',
  limit: limitMs,
  beside: [{ name: 'what arrives where', value: peer }],
  note: `${boat.kit.length} units, ${messages} messages on ${buses.length} buses, ${lines.length} lines`,
});
