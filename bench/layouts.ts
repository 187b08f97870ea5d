import { readFileSync } from 'node:fs';
import loadHighs from 'highs';
import { checkLayout } from '../src/core/backbone/check-layout.ts';
import { fullWork } from '../src/core/backbone/full-work.ts';
import { type BoatSize, ladderBoat } from '../src/core/backbone/ladder-boat.test-helper.ts';
import { type FlowModel, layoutLp } from '../src/core/backbone/layout-lp.test-helper.ts';
import { layoutProblems } from '../src/core/backbone/layout-problems.ts';
import type { Layout, Problem } from '../src/core/backbone/problem.ts';
import { solveLayout } from '../src/core/backbone/solve-layout.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { tell } from './figure.ts';
import { shareOf as at, ownMs } from './own-ms.ts';

/**
 * The search for the cheapest layout with every limit, and beside it, in the same process, a general solver of integer
 * programmes on the same boats without currents and volts. Arguments: boats a size, boats for the general solver, seconds
 * it may take for each, boats for its second opinion.
 */
const [boats = 30, peerBoats = 3, peerS = 60, opinions = 50] = process.argv.slice(2).map(Number);

interface Answer {
  readonly ms: number;
  readonly firstMs: number;
  readonly layout: Layout | undefined;
}

const answer = (problem: Problem): Answer => {
  const started = ownMs();
  let [firstMs, layout]: [number | undefined, Layout | undefined] = [undefined, undefined];
  for (const next of solveLayout(problem, fullWork)) {
    if (next.status !== 'infeasible') firstMs ??= ownMs() - started;
    layout = next;
  }
  const ms = ownMs() - started;
  const broken = layout === undefined || layout.status === 'infeasible' ? [] : checkLayout(problem, layout).broken;
  if (broken.length > 0) throw new Error(`The checker refuses a layout: ${broken.join(' ')}`);
  return { ms, firstMs: firstMs ?? ms, layout };
};

/** Currents and volts that never bind, for the linear programme knows nothing of them. */
const withoutVolts = (boat: Problem): Problem => {
  const { lostMv: _, ...feed } = boat.feed;
  const grades = boat.grades.filter(({ id }) => id === 'light');
  return { ...boat, grades: grades.map((grade) => ({ ...grade, maxMa: 1_000_000, microOhmPerM: 1 })), feed };
};

const highs = await loadHighs();

interface PeerAnswer {
  readonly ms: number;
  readonly status: string;
  readonly cost: number;
}

const peerAnswer = (problem: Problem, model: FlowModel, seconds: number): PeerAnswer => {
  const [grade] = problem.grades;
  if (grade === undefined) throw new Error('The boat has no grade of cable.');
  const started = ownMs();
  const solved = highs.solve(layoutLp({ problem, grade, model }), {
    mip_rel_gap: 0,
    time_limit: seconds,
    output_flag: false,
  });
  return { ms: ownMs() - started, status: solved.Status, cost: Math.round(solved.ObjectiveValue * 1000) };
};

const ofSize = (size: BoatSize, bounds: { readonly limit: number; readonly stretch: number }): void => {
  const answers = Array.from({ length: boats }, (_, seed) => answer(ladderBoat(seed, size)));
  const name = `${size.devices} devices on ${size.places} places`;
  const count = (status: string): number => answers.filter(({ layout }) => layout?.status === status).length;
  const gaps = answers.flatMap(({ layout }) =>
    layout?.status === 'gap' ? [(100 * (layout.cost - layout.bound)) / layout.cost] : [],
  );
  const times = answers.map(({ ms }) => ms);
  const firstTimes = answers.map(({ firstMs }) => firstMs);
  const gapPct = gaps.length === 0 ? '' : `, ${gaps.length} with a gap (median ${at(gaps, 0.5).toFixed(2)} %)`;
  const note = `${count('proven')} of ${boats} proven${gapPct}, ${count('infeasible')} without an answer`;
  const unit = 'ms';
  tell({ what: `${name}: first usable answer, median`, value: at(firstTimes, 0.5), unit, limit: 100 });
  tell({ what: `${name}: every limit, to the proof, median`, value: at(times, 0.5), unit, ...bounds, note });
  tell({ what: `${name}: the same, p95`, value: at(times, 0.95), unit, ...bounds });
};

const besidePeer = (size: BoatSize): void => {
  const [ours, plain, strong]: [number[], number[], number[]] = [[], [], []];
  for (let seed = 0; seed < peerBoats; seed += 1) {
    const problem = withoutVolts(ladderBoat(seed, size));
    ours.push(answer(problem).ms);
    plain.push(peerAnswer(problem, 'plain', peerS).ms);
    strong.push(peerAnswer(problem, 'strong', peerS).ms);
  }
  tell({
    what: `${size.devices} devices on ${size.places} places without volts, median`,
    value: at(ours, 0.5),
    unit: 'ms',
    beside: [
      { name: 'HiGHS, plain model', value: at(plain, 0.5) },
      { name: 'HiGHS, strong model', value: at(strong, 0.5) },
    ],
    note: `median of ${peerBoats}, the solver at most ${peerS} s each`,
  });
};

const secondOpinions = (size: BoatSize): void => {
  let [same, late] = [0, 0];
  for (let seed = 0; seed < opinions; seed += 1) {
    const problem = withoutVolts(ladderBoat(seed, size));
    const { layout } = answer(problem);
    const peer = peerAnswer(problem, seed % 2 === 0 ? 'plain' : 'strong', peerS);
    if (peer.status === 'Time limit reached') late += 1;
    else if (peer.status === 'Infeasible' ? layout?.status === 'infeasible' : layout?.cost === peer.cost) same += 1;
    else console.log(`seed ${seed}: ${layout?.status} at ${layout?.cost}, the peer ${peer.status} at ${peer.cost}`);
  }
  tell({
    what: `second opinion by HiGHS on boats of ${size.places} places: the same cost`,
    value: same,
    unit: 'boats',
    limit: opinions - late,
    more: true,
    note: `of ${opinions}, ${late} not in time`,
  });
};

for (const name of ['gannet', 'sandpiper', 'bonxie']) {
  const text = readFileSync(new URL(`../examples/${name}/${name}.boat.json`, import.meta.url), 'utf8');
  for (const problem of layoutProblems(readBoat(text))) {
    const { ms, layout } = answer(problem);
    tell({
      what: `${name}, ${problem.bus}: ${layout?.status}`,
      value: ms,
      unit: 'ms',
      limit: name === 'bonxie' ? 5000 : 300,
    });
  }
}
ofSize({ places: 35, devices: 25 }, { limit: 300, stretch: 100 });
ofSize({ places: 60, devices: 40 }, { limit: 2000, stretch: 300 });
tell({
  what: 'memory of the process after all of these',
  value: process.memoryUsage.rss() / 1e6,
  unit: 'MB',
  limit: 300,
});
besidePeer({ places: 35, devices: 25 });
secondOpinions({ places: 16, devices: 10 });
