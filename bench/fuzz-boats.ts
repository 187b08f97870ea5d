import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { boatSeeds, fuzzBoats } from '../tests/fuzz/fuzz-boats.ts';
import { startLot } from '../tests/recordings/mutate-bytes.ts';

// Boat files damaged where it hurts, one after the other: each is read or refused in words. Ends with 1 where one was not.
//   npm run fuzz:boats -- --count 5000000 --seed 1

const { values } = parseArgs({
  options: { count: { type: 'string', default: '5000000' }, seed: { type: 'string', default: '1' } },
});
const count = Number(values.count);
const lot = startLot(Number(values.seed));
const batch = 50_000;

const whole = readFileSync(new URL('../examples/sandpiper/sandpiper.boat.json', import.meta.url), 'utf8');
const seeds = boatSeeds(whole);
const startMs = performance.now();
console.log(`${count} damaged boats, seed ${values.seed}`);
for (let done = 0; done < count && process.exitCode !== 1; done += batch) {
  const some = Math.min(batch, count - done);
  const told = fuzzBoats(seeds, { count: some, lot, textEvery: 20, writeEvery: 20 });
  const took = `${((performance.now() - startMs) / 1000).toFixed(0)} s`;
  console.log(
    `${done + told.tried} in ${took}: of the last, ${told.texts} as text, ${told.good} good, ${told.written} written`,
  );
  for (const fault of told.faults) console.log(`  behind ${done}, ${fault}`);
  if (told.faults.length > 0) process.exitCode = 1;
}
