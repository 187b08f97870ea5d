import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { Boat } from '../src/core/boat/boat-schema.ts';
import { aFullBoat } from '../src/core/boat/full-boat.test-helper.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { plan } from '../src/core/plan.ts';
import { randomEdits } from '../tests/fuzz/random-edits.ts';
import { startLot } from '../tests/recordings/mutate-bytes.ts';

// Edits at random, plausible or not, on three boats in turn, one of them with more than a hundred units: each is made or
// refused in words, taken back, written and planned now and then. Ends with 1 where one was not, or a plan took very long.
//   npm run fuzz:edits -- --count 1000000 --seed 1

const { values } = parseArgs({
  options: { count: { type: 'string', default: '1000000' }, seed: { type: 'string', default: '1' } },
});
const count = Number(values.count);
const lot = startLot(Number(values.seed));
const batch = 10_000;

const demo = (id: string): Boat =>
  readBoat(readFileSync(new URL(`../examples/${id}/${id}.boat.json`, import.meta.url), 'utf8'));
const gannet = demo('gannet');
const boats = [aFullBoat(), gannet, demo('bonxie')];

/** Processor time that no plan takes, however the edits left the boat; one that does hangs. */
const longestS = 60;
let slowestS = 0;

const planned = (boat: Boat): void => {
  const before = process.cpuUsage();
  plan(boat, new Map());
  const { user, system } = process.cpuUsage(before);
  const tookS = (user + system) / 1e6;
  slowestS = Math.max(slowestS, tookS);
  if (tookS > longestS) throw new Error(`a plan took ${tookS.toFixed(0)} s`);
};

const startMs = performance.now();
console.log(`${count} edits at random, seed ${values.seed}`);
for (let done = 0; done < count && process.exitCode !== 1; done += batch) {
  const boat = boats[(done / batch) % boats.length] ?? gannet;
  const some = Math.min(batch, count - done);
  const {
    made,
    refused,
    planned: plans,
    faults,
  } = randomEdits(boat, {
    ...{ lot, count: some, plan: planned },
    ...{ checkEvery: 20, planEvery: 1000 },
  });
  const took = `${((performance.now() - startMs) / 1000).toFixed(0)} s`;
  console.log(
    `${done + some} in ${took}: of the last, ${made} made, ${refused} refused, ${plans} planned, slowest plan yet ${slowestS.toFixed(1)} s`,
  );
  for (const fault of faults.slice(0, 20)) console.log(`  behind ${done}: ${fault}`);
  if (faults.length > 0) process.exitCode = 1;
}
