import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { aFullBoat } from '../src/core/boat/full-boat.test-helper.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { plan } from '../src/core/plan.ts';
import { randomEdits } from '../tests/fuzz/random-edits.ts';
import { startLot } from '../tests/recordings/mutate-bytes.ts';

// Edits at random, plausible or not, on two boats in turn: each is made or refused in words, taken back, written and
// planned now and then. Ends with 1 where one was not.
//   npm run fuzz:edits -- --count 1000000 --seed 1

const { values } = parseArgs({
  options: { count: { type: 'string', default: '1000000' }, seed: { type: 'string', default: '1' } },
});
const count = Number(values.count);
const lot = startLot(Number(values.seed));
const batch = 10_000;

const gannet = readBoat(readFileSync(new URL('../examples/gannet/gannet.boat.json', import.meta.url), 'utf8'));
const boats = [aFullBoat(), gannet];
const startMs = performance.now();
console.log(`${count} edits at random, seed ${values.seed}`);
for (let done = 0; done < count && process.exitCode !== 1; done += batch) {
  const boat = boats[(done / batch) % boats.length] ?? gannet;
  const some = Math.min(batch, count - done);
  const { made, refused, planned, faults } = randomEdits(boat, {
    ...{ lot, count: some, plan: (planned) => void plan(planned, new Map()) },
    ...{ checkEvery: 20, planEvery: 1000 },
  });
  const took = `${((performance.now() - startMs) / 1000).toFixed(0)} s`;
  console.log(`${done + some} in ${took}: of the last, ${made} made, ${refused} refused, ${planned} planned`);
  for (const fault of faults.slice(0, 20)) console.log(`  behind ${done}: ${fault}`);
  if (faults.length > 0) process.exitCode = 1;
}
