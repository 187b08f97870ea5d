import { compareCosts, costOfSpots, type SpotCost } from './darkness.ts';
import { Decoder, type Recipe } from './decode.ts';
import type { Ground } from './ground.ts';
import { plainSpots } from './plain-spots.ts';
import { orderOf } from './reach.ts';
import { slicesOf } from './slices.ts';
import type { Spot } from './spot.ts';
import { tighten } from './tighten.ts';

/** An order found, with what it costs. */
export interface FoundOrder {
  readonly spots: readonly Spot[];
  readonly cost: SpotCost;
}

interface Tried extends FoundOrder {
  readonly recipe: Recipe;
}

const habits = [
  { stretches: 'free', isEased: true },
  { stretches: 'whole', isEased: true },
  { stretches: 'whole', isEased: false },
  { stretches: 'split', isEased: true },
  { stretches: 'split', isEased: false },
] as const;

/** Numbers that look drawn by lot and are the same in every run. */
const lots = (): ((below: number) => number) => {
  let state = 0x2545f491;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % below;
  };
};

/** The half hours of work from the beginning of each job to the end of all that waits for it. */
const tailsOf = ({ jobs }: Ground, order: readonly number[]): Float64Array => {
  const tails = new Float64Array(jobs.length);
  for (const job of [...order].reverse()) {
    let most = 0;
    for (const { job: next, wait } of jobs[job]?.succs ?? []) most = Math.max(most, (tails[next] ?? 0) + wait);
    tails[job] = most + (jobs[job]?.slots ?? 0);
  }
  return tails;
};

/** Times that a job which found no place is given one before all others, while it has the choice of all days. */
const repairs = 4;

const decoded = (
  decoder: Decoder,
  asked: Recipe,
  purse: { left: number },
): { readonly recipe: Recipe; readonly loose: SpotCost | undefined } => {
  let recipe = asked;
  for (let repaired = 0; ; repaired += 1) {
    decoder.work = 0;
    const loose = decoder.decode(recipe);
    purse.left -= decoder.work + 1;
    if (loose !== undefined || repaired === repairs) return { recipe, loose };
    recipe = { ...recipe, firsts: [decoder.failed, ...recipe.firsts.filter((job) => job !== decoder.failed)] };
  }
};

/** Jobs for which there are few days first, with all they wait for; of the others the urgent. */
const rareFirst = ({ jobs }: Ground, urgent: readonly number[]): number[] => {
  const days = jobs.map(({ window: { from, to } }) =>
    to.reduce((sum, end, day) => sum + (end > (from[day] ?? 0) ? 1 : 0), 0),
  );
  return [...urgent].sort((a, b) => (days[a] ?? 0) - (days[b] ?? 0));
};

const better = (a: Tried | undefined, b: Tried): Tried =>
  a === undefined ||
  compareCosts(b.cost, a.cost) < 0 ||
  (compareCosts(b.cost, a.cost) === 0 && b.cost.ends < a.cost.ends)
    ? b
    : a;

/**
 * Orders of a ground: first some built by rules of thumb, then changes of the best by one job given its place earlier or later,
 * each better than the one before; between them one job after another, where that is cheaper than what was built.
 * `isEnough` ends it. The work of the purse is counted in places given.
 */
export function* improvedOrders(
  ground: Ground,
  purse: { left: number },
  isEnough: (cost: SpotCost) => boolean,
): Generator<FoundOrder> {
  const order = orderOf(ground.jobs.map(({ succs }) => succs.map(({ job }) => job)));
  if (order === undefined) return;
  const decoder = new Decoder(ground, slicesOf(ground));
  const tryOne = (asked: Recipe): Tried | undefined => {
    const { recipe, loose } = decoded(decoder, asked, purse);
    if (loose === undefined) return undefined;
    const before = decoder.timeline.spots.flatMap((spot) => spot ?? []);
    const cost = tighten(decoder.timeline, decoder.slices);
    purse.left -= ground.jobs.length;
    if (compareCosts(loose, cost) < 0) return { recipe, cost: loose, spots: before };
    return { recipe, cost, spots: decoder.timeline.spots.flatMap((spot) => spot ?? []) };
  };
  const tails = tailsOf(ground, order);
  const urgent = [...order].sort((a, b) => (tails[b] ?? 0) - (tails[a] ?? 0) || a - b);
  let best: Tried | undefined;
  const lists = [urgent, rareFirst(ground, urgent)];
  for (const recipe of lists.flatMap((list) => habits.map((own) => ({ list, firsts: [], ...own })))) {
    const tried = tryOne(recipe);
    const next = tried === undefined ? best : better(best, tried);
    if (next !== undefined && next !== best) yield next;
    best = next;
    if (best !== undefined && (isEnough(best.cost) || purse.left <= 0)) break;
  }
  // Whatever is found, it is never worse than one job after another.
  const plain = plainSpots(ground);
  if (plain !== undefined) {
    const cost = costOfSpots(ground, plain);
    if (best === undefined || compareCosts(cost, best.cost) < 0) yield { spots: plain, cost };
  }
  if (best !== undefined) yield* climb(best, tryOne, purse, isEnough);
}

/** Of so few jobs all orders can be tried, so that few changes are. */
const fewJobs = 14;
const fewTries = 150;

function* climb(
  start: Tried,
  tryOne: (recipe: Recipe) => Tried | undefined,
  purse: { left: number },
  isEnough: (cost: SpotCost) => boolean,
): Generator<FoundOrder> {
  const draw = lots();
  let [best, at] = [start, start];
  let idle = 0;
  let vain = 0;
  const most = best.recipe.list.length <= fewJobs ? fewTries : Number.POSITIVE_INFINITY;
  while (purse.left > 0 && !isEnough(best.cost) && vain < most) {
    const tried = tryOne(changed(at.recipe, draw));
    idle += 1;
    vain += 1;
    if (
      tried !== undefined &&
      (compareCosts(tried.cost, at.cost) < 0 ||
        (compareCosts(tried.cost, at.cost) === 0 && tried.cost.ends <= at.cost.ends))
    )
      at = tried;
    if (compareCosts(at.cost, best.cost) < 0) {
      best = at;
      idle = 0;
      vain = 0;
      yield best;
    }
    // Far from any gain the search goes on from a neighbour that may cost more.
    if (idle > 40 + 4 * best.recipe.list.length) {
      const other = tryOne(changed(changed(changed(best.recipe, draw), draw), draw));
      at = other ?? best;
      idle = 0;
    }
  }
}

/** A list with one job moved, two changed for each other, or the habits changed. */
const changed = (recipe: Recipe, draw: (below: number) => number): Recipe => {
  const list = [...recipe.list];
  const [from, to, how] = [draw(list.length), draw(list.length), draw(40)];
  if (how === 0) return { ...recipe, stretches: (['free', 'whole', 'split'] as const)[draw(3)] ?? 'whole' };
  if (how === 1) return { ...recipe, isEased: !recipe.isEased };
  if (how === 2) return { ...recipe, firsts: [] };
  if (how < 15) {
    const [one, other] = [list[from], list[to]];
    if (one !== undefined && other !== undefined) [list[from], list[to]] = [other, one];
    return { ...recipe, list };
  }
  const [job] = list.splice(from, 1);
  if (job !== undefined) list.splice(to, 0, job);
  return { ...recipe, list };
};
