import { brokenDrops, type MeasuredDrop, measureDrops, type PlacedTee } from './check-drops.ts';
import { lostVolts } from './check-volts.ts';
import type { Layout, LayoutStep, Problem, ProblemGrade, ProblemWay } from './problem.ts';

/** What the checker found: the exact cost, and every limit the layout breaks, in words; empty when it holds. */
export interface LayoutCheck {
  /** thousandths of a hundredth of the currency; 0 where the layout is too broken to price */
  readonly cost: number;
  readonly broken: readonly string[];
}

/**
 * Recomputes the cost of a layout and tests every limit of its problem. It shares no code with the solver nor with the
 * figures of the plan, so that a mistake in one of them shows. Length limits are the fail limits of the grade.
 */
export const checkLayout = (problem: Problem, layout: Layout): LayoutCheck => {
  const broken: string[] = [];
  const grade = problem.grades.find((entry) => entry.id === layout.grade);
  if (grade === undefined) return { cost: 0, broken: [`Grade ${layout.grade} is not allowed on this bus.`] };
  if (layout.problem !== problem.hash) broken.push('This layout was made for another state of the boat.');
  broken.push(...brokenWalk(problem, layout.walk));
  if (broken.length > 0) return { cost: 0, broken };
  const tees = layout.walk.flatMap(({ place, tees: own }, step) => own.map((tee) => ({ tee, step, place })));
  const drops = measureDrops(problem, tees);
  broken.push(...brokenTees(problem, tees), ...brokenDrops(problem, drops));
  broken.push(...brokenLengths({ problem, walk: layout.walk, drops, limitMm: grade.failMm }));
  broken.push(...lostVolts({ problem, grade, atMm: positionsMm(problem, layout.walk), tees, drops }));
  const cost = costOf({ problem, grade, walk: layout.walk, tees, drops });
  if (cost !== layout.cost) broken.push(`The layout says it costs ${layout.cost}; it costs ${cost}.`);
  if (layout.bound > cost) broken.push(`The layout says nothing costs less than ${layout.bound}; it costs ${cost}.`);
  return { cost, broken };
};

const metres = (mm: number): string => `${mm / 1000} m`;

const brokenWalk = (problem: Problem, walk: readonly LayoutStep[]): string[] => {
  const broken: string[] = [];
  const first = walk[0];
  const last = walk.at(-1);
  if (first === undefined || last === undefined) return ['The trunk passes no place.'];
  if (first.via !== undefined) broken.push(`The trunk starts at ${first.place}, yet comes there by ${first.via}.`);
  const passed = new Map<string, number>();
  for (const [step, { place, via }] of walk.entries()) {
    if (!problem.places.some((entry) => entry.id === place)) broken.push(`There is no place ${place}.`);
    const before = walk[step - 1];
    if (before === undefined) continue;
    const way = problem.ways.find((entry) => entry.id === via);
    if (way === undefined || !joins(way, before.place, place))
      broken.push(`No way ${via ?? 'named'} leads from ${before.place} to ${place}.`);
    else passed.set(way.id, (passed.get(way.id) ?? 0) + 1);
  }
  for (const way of problem.ways) {
    const times = passed.get(way.id) ?? 0;
    const kept = keptTimes(problem, way.id);
    const most = Math.max(way.trunk, kept);
    if (times > most) broken.push(`The trunk runs ${times} times through ${way.id}; ${most} is the most.`);
    if (times < kept) broken.push(`The trunk that lies in ${way.id} is not used.`);
  }
  for (const end of new Set([first.place, last.place])) {
    if (problem.places.some((entry) => entry.id === end && !entry.end)) broken.push(`The trunk may not end at ${end}.`);
  }
  return broken;
};

/** How often trunk that is kept lies in a way. */
const keptTimes = ({ held = [] }: Problem, way: string): number => held.filter(({ via }) => via === way).length;

const joins = (way: ProblemWay, one: string, other: string): boolean =>
  (way.a === one && way.b === other) || (way.a === other && way.b === one);

/** Every device once, every wanted spare once at its own place, the feed once; all at places that allow tees. */
const brokenTees = (problem: Problem, tees: readonly PlacedTee[]): string[] => {
  const broken: string[] = [];
  const wanted = new Map<string, string | undefined>(problem.devices.map(({ id }) => [id, undefined]));
  for (const { id, spares } of problem.places) {
    for (let n = 1; n <= spares; n++) wanted.set(`spare@${id}#${n}`, id);
  }
  if (problem.feed.reach.length > 0) wanted.set('feed', undefined);
  else broken.push('No panel feeds this bus.');
  for (const [tee, place] of wanted) {
    const found = tees.filter((entry) => entry.tee === tee);
    if (found.length !== 1)
      broken.push(found.length === 0 ? `${tee} has no tee.` : `${tee} has ${found.length} tees; it needs one.`);
    if (place !== undefined && found.some((entry) => entry.place !== place)) broken.push(`${tee} is not at ${place}.`);
  }
  for (const { tee, place } of tees) {
    if (!wanted.has(tee)) broken.push(`A tee serves ${tee}, which is not on this bus.`);
    if (!problem.places.some((entry) => entry.id === place && entry.tees)) broken.push(`No tee may stand at ${place}.`);
    const reached = tee !== 'feed' || problem.feed.reach.some((entry) => entry.place === place);
    if (!reached) broken.push(`No feed lead reaches ${place}.`);
  }
  if (problem.devices.length > problem.limits.devices) {
    broken.push(`${problem.devices.length} devices are on the bus; the limit is ${problem.limits.devices}.`);
  }
  return broken;
};

/** Longest distance of every step from the start of the trunk. */
const positionsMm = (problem: Problem, walk: readonly LayoutStep[]): number[] => {
  let atMm = 0;
  return walk.map(({ via }) => {
    atMm += problem.ways.find(({ id }) => id === via)?.maxMm ?? 0;
    return atMm;
  });
};

const brokenLengths = ({
  problem,
  walk,
  drops,
  limitMm,
}: {
  readonly problem: Problem;
  readonly walk: readonly LayoutStep[];
  readonly drops: readonly MeasuredDrop[];
  readonly limitMm: number;
}): string[] => {
  const atMm = positionsMm(problem, walk);
  const trunkMm = atMm.at(-1) ?? 0;
  const ends = [
    { tee: 'one end', mm: 0, boughtMm: 0 },
    { tee: 'the other end', mm: trunkMm, boughtMm: 0 },
  ];
  const points = [...ends, ...drops.map(({ tee, step, boughtMm }) => ({ tee, mm: atMm[step] ?? 0, boughtMm }))];
  let worst = { mm: 0, between: '' };
  for (const one of points) {
    for (const other of points) {
      const mm = one === other ? 0 : Math.abs(one.mm - other.mm) + one.boughtMm + other.boughtMm;
      if (Number.isFinite(mm) && mm > worst.mm) worst = { mm, between: `${one.tee} to ${other.tee}` };
    }
  }
  return worst.mm > limitMm
    ? [`From ${worst.between} is ${metres(worst.mm)} at its longest; the limit is ${metres(limitMm)}.`]
    : [];
};

const costOf = ({
  problem,
  grade,
  walk,
  tees,
  drops,
}: {
  readonly problem: Problem;
  readonly grade: ProblemGrade;
  readonly walk: readonly LayoutStep[];
  readonly tees: readonly PlacedTee[];
  readonly drops: readonly MeasuredDrop[];
}): number => {
  let cost = 1000 * (tees.length * problem.prices.tee + 2 * problem.prices.terminator);
  for (const { via } of walk) {
    const way = problem.ways.find(({ id }) => id === via);
    if (way !== undefined) cost += way.mm * grade.trunkPerM + 1000 * way.extra;
  }
  for (const way of problem.ways) cost -= keptTimes(problem, way.id) * (way.mm * grade.trunkPerM + 1000 * way.extra);
  for (const { mm } of drops) if (Number.isFinite(mm)) cost += mm * grade.dropPerM;
  for (const { tee, place } of tees) {
    const reach = tee === 'feed' ? problem.feed.reach.find((entry) => entry.place === place) : undefined;
    if (reach !== undefined) cost += 1000 * problem.prices.feed + reach.mm * problem.feed.leadPerM;
  }
  return cost;
};
