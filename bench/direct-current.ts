import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fullWork } from '../src/core/backbone/full-work.ts';
import { layoutProblems } from '../src/core/backbone/layout-problems.ts';
import { solveLayout } from '../src/core/backbone/solve-layout.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { type DcLoad, type DcNet, solveDc } from '../src/core/network/dc-solve.ts';
import type { DcEdge } from '../src/core/network/dc-tree.ts';
import { lateParts } from '../src/core/plan.ts';
import { planWith } from '../src/core/plan-with.ts';
import { hasNgspice } from '../tests/circuits/ask-ngspice.ts';
import { spiceDeck } from '../tests/circuits/spice-deck.ts';
import { tell } from './figure.ts';

/**
 * One solve of a boat’s direct current, and beside it, in the same run, ngspice on the same netlist; then the share of a whole
 * plan that everything about power takes.
 */
const runs = 41;
const warmUps = 200;
/** Analyses of one simulator process from which the time of one is taken, so that starting and reading do not count. */
const analyses = 200;
const limits = { small: { devices: 30, ms: 2 }, large: { devices: 500, ms: 40 } };
const planSharePct = 10;

const panels = 4;
const teesABus = 25;

/** Half of the devices on backbones fed from a panel, half on feeds of their own; every other one of these holds its power. */
const netOf = (devices: number): DcNet => {
  const edges: DcEdge[] = [{ id: 'inside', from: 'inside', to: 'bank', loopOhm: 0.004 }];
  const loads: DcLoad[] = [];
  for (let panel = 0; panel < panels; panel += 1) {
    const from = panel === 0 ? 'bank' : 'panel 0';
    edges.push({ id: `feeder ${panel}`, from, to: `panel ${panel}`, loopOhm: 0.1 / devices });
  }
  const own = Math.ceil(devices / 2);
  for (let unit = 0; unit < own; unit += 1) {
    const node = `unit ${unit}`;
    edges.push({ id: node, from: `panel ${unit % panels}`, to: node, loopOhm: 0.05 + 0.01 * (unit % 7) });
    loads.push(unit % 2 === 0 ? { node, behaves: 'power', watts: 12 } : { node, behaves: 'current', amps: 0.8 });
  }
  for (let tee = 0; tee < devices - own; tee += 1) {
    const first = tee % teesABus === 0;
    const from = first ? `panel ${Math.floor(tee / teesABus) % panels}` : `tee ${tee - 1}`;
    edges.push({ id: `to tee ${tee}`, from, to: `tee ${tee}`, loopOhm: first ? 0.06 : 0.05 });
    edges.push({ id: `drop ${tee}`, from: `tee ${tee}`, to: `device ${tee}`, loopOhm: 0.11 });
    loads.push({ node: `device ${tee}`, behaves: 'current', amps: 0.05 });
  }
  return { source: 'inside', sourceV: 12, edges, loads };
};

const median = (values: readonly number[]): number =>
  [...values].sort((one, other) => one - other)[Math.floor((values.length - 1) / 2)] ?? 0;

const timedMs = (work: () => void): number => {
  const started = performance.now();
  work();
  return performance.now() - started;
};

const ourMs = (net: DcNet): number => {
  for (let run = 0; run < warmUps; run += 1) solveDc(net);
  return median(Array.from({ length: runs }, () => timedMs(() => solveDc(net))));
};

/** Milliseconds of the simulator: one whole run, and one analysis without starting and reading. */
const peerMs = (net: DcNet): { wholeMs: number; analysisMs: number } => {
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-bench-'));
  const deck = spiceDeck('bench', [{ net, converters: [] }]).text;
  writeFileSync(join(folder, 'net.cir'), deck);
  const runMs = (count: number): number => {
    const input = `source net.cir\n${'op\n'.repeat(count)}write out.raw\nquit\n`;
    return timedMs(() => {
      const done = spawnSync('ngspice', ['-n', '-p'], { cwd: folder, input });
      if (done.status !== 0) throw new Error(`The simulator gave up: ${done.stderr.toString()}`);
    });
  };
  const once = Array.from({ length: 11 }, () => runMs(1));
  const often = Array.from({ length: 3 }, () => runMs(analyses + 1));
  rmSync(folder, { recursive: true });
  return { wholeMs: median(once), analysisMs: (median(often) - median(once)) / analyses };
};

for (const { devices, ms: limitMs } of Object.values(limits)) {
  const net = netOf(devices);
  const ours = ourMs(net);
  const peer = hasNgspice ? peerMs(net) : undefined;
  tell({
    what: `${devices} devices, one solve, median`,
    value: ours,
    unit: 'ms',
    limit: limitMs,
    ...(peer === undefined
      ? { note: 'ngspice is not here to stand beside it' }
      : {
          beside: [
            { name: 'ngspice, one analysis', value: peer.analysisMs },
            { name: 'with starting and reading', value: peer.wholeMs },
          ],
        }),
  });
}

for (const name of ['gannet', 'bonxie', 'wreck']) {
  const boat = readBoat(readFileSync(new URL(`../examples/${name}/${name}.boat.json`, import.meta.url), 'utf8'));
  const layouts = new Map(
    layoutProblems(boat).flatMap((problem) =>
      [...solveLayout(problem, fullWork)].slice(-1).map((layout) => [problem.hash, layout] as const),
    ),
  );
  let powerMs = 0;
  const power: typeof lateParts.power = (input) => {
    const started = performance.now();
    const parts = lateParts.power(input);
    powerMs = performance.now() - started;
    return parts;
  };
  // a planner keeps what it has laid and asks nothing twice, so each plan has one of its own
  const planAnew = (): unknown => planWith({ ...lateParts, power })(boat, layouts);
  for (let run = 0; run < 10; run += 1) planAnew();
  const shares: number[] = [];
  const times: number[] = [];
  for (let run = 0; run < runs; run += 1) {
    const wholeMs = timedMs(planAnew);
    shares.push((100 * powerMs) / wholeMs);
    times.push(powerMs);
  }
  tell({
    what: `${name}: share of power in a plan with all laid anew, median`,
    value: median(shares),
    unit: '%',
    limit: planSharePct,
    note: `${median(times).toFixed(2)} ms`,
  });
}
