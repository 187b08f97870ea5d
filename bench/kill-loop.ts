import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { killLoop } from '../tests/crash/kill-loop.ts';
import { startLot } from '../tests/recordings/mutate-bytes.ts';

// Kills a program that edits, saves and writes its log at a moment of chance, and looks at what is left, again and again.
//   npm run kill-loop -- --kills 1000 --seed 1

const { values } = parseArgs({
  options: { kills: { type: 'string', default: '1000' }, seed: { type: 'string', default: '1' } },
});

const folder = mkdtempSync(join(tmpdir(), 'fairlead-kills-'));
const startMs = performance.now();
const { faults, ...told } = await killLoop({ folder, kills: Number(values.kills), lot: startLot(Number(values.seed)) });
console.log(`${told.kills} kills in ${((performance.now() - startMs) / 1000).toFixed(0)} s, seed ${values.seed}`);
console.log(
  `  ${told.saves} saves and ${told.lines} lines of the log were told as safe; ${told.tornLines} lines are torn`,
);
console.log(`  ${told.withMark} kills left the mark of a save under way, ${told.withTemporary} a file half written`);
for (const fault of faults) console.log(`  ${fault}`);
if (faults.length > 0) process.exitCode = 1;
else console.log('  nothing was lost, nothing left behind');
rmSync(folder, { recursive: true, force: true });
