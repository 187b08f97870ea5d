import { readFileSync } from 'node:fs';
import loadHighs from 'highs';
import { indexBoat } from '../src/core/boat/boat-index.ts';
import type { Boat } from '../src/core/boat/boat-schema.ts';
import { canonicalBoat } from '../src/core/boat/canonical-boat.ts';
import { lastPhase } from '../src/core/boat/phase.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { joinsOf } from '../src/core/joins/joins-of.ts';
import { proposeJoins } from '../src/core/joins/proposing/propose-joins.ts';
import { refitOf } from '../src/core/readings/refit.ts';
import { tell } from './figure.ts';
import { ownMs, shareOf } from './own-ms.ts';

/** Demo boats wired from nothing: the time to the proved joins, beside loading the general solver that could do it. */
const read = (name: string): Boat =>
  canonicalBoat(readBoat(readFileSync(new URL(`../examples/${name}/${name}.boat.json`, import.meta.url), 'utf8')));

const started = ownMs();
await loadHighs();
const peerMs = ownMs() - started;

for (const name of ['sandpiper', 'gannet', 'bonxie']) {
  const bare = { ...read(name), joins: [] };
  const times: number[] = [];
  let says = '';
  for (let run = 0; run < 5; run += 1) {
    const index = indexBoat(bare);
    const reaches = refitOf(index, (phase) => joinsOf(index, phase)).reachesIn(lastPhase(bare));
    const from = ownMs();
    const proposal = proposeJoins(index, reaches);
    times.push(ownMs() - from);
    says = `${proposal?.joins.length ?? 0} joins, ${proposal?.proven === true ? 'proved' : 'not proved'}, ${proposal?.work ?? 0} branches`;
  }
  tell({
    what: `${name}: wired from nothing, median of 5`,
    value: shareOf(times, 0.5),
    unit: 'ms',
    beside: [{ name: 'only loading HiGHS', value: peerMs }],
    note: says,
  });
}
