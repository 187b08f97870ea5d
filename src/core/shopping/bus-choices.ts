import { busLines } from '../backbone/bus-lines.ts';
import { canonicalJson } from '../backbone/canonical-json.ts';
import { layoutPrice } from '../backbone/layout-price.ts';
import type { Layout, Problem } from '../backbone/problem.ts';
import { runnerUpLayout } from '../backbone/solve-layout.ts';
import { teeChoices } from '../backbone/tee-choices.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import { remember } from '../boat/remember.ts';
import type { BusEntry } from '../plan-shape.ts';
import { priceList } from '../prices/price-list.ts';
import { makeRouter } from '../ways/routes.ts';
import { cutLines } from './cut-lines.ts';
import type { OrderInput } from './line-cutter.ts';
import type { LaidBus } from './trunk-as-bought.ts';

/** What a bus costs in its parts, and what else could have been done: the layout that comes next, other places for each tee. */
export type BusChoices = Pick<BusEntry, 'price' | 'nextBest' | 'tees' | 'cableCost'>;

/** Work for finding the layout that comes next: enough for a proof on most boats, little enough for an edit. */
const nextWork = 20_000;

/** The layout that comes next, kept as long as the layout is: it hangs on nothing but that and its problem, whose hash it bears. */
const nextKnown = new WeakMap<Layout, { readonly next: Layout | undefined }>();

const nextOf = (problem: Problem, layout: Layout): Layout | undefined => {
  const known = nextKnown.get(layout) ?? { next: runnerUpLayout(problem, layout, { work: nextWork }) };
  nextKnown.set(layout, known);
  return known.next;
};

/** Other places for each tee; a settled layout is made anew for every plan, so the walk itself is the key. */
const teesOf = remember({
  most: 16,
  keyOf: ({ problem, layout }: LaidBus) => `${problem.hash} ${layout.grade} ${canonicalJson(layout.walk)}`,
  find: ({ problem, layout }) =>
    teeChoices(problem, layout).map(({ others, ...tee }) => ({
      ...tee,
      others: others.map(({ breaks, ...other }) => ({ ...other, breaks: [...breaks] })),
    })),
});

/** One bus whose cable is to be priced, with all that its pieces hang on besides its problem, as text. */
interface CableAsk {
  readonly index: BoatIndex;
  readonly entry: BusEntry;
  readonly laid: LaidBus;
  readonly bought: string;
}

/** What the cable of a bus costs in the pieces one can buy, in hundredths. */
const cableCostOf = remember({
  most: 16,
  keyOf: ({ laid: { problem, layout }, bought }: CableAsk) =>
    `${problem.hash} ${layout.grade} ${canonicalJson(layout.walk)} ${bought}`,
  find: ({ index, entry, laid }) => {
    const { lines } = busLines({ index, router: makeRouter(index), ...laid });
    const cable = lines.filter(({ kind }) => kind !== 'feed');
    const input: OrderInput = { index, prices: priceList(index.boat), buses: new Map([[entry.id, entry]]) };
    return cutLines(input, { lines: cable, laid: [laid] }).reduce((sum, { cut }) => sum + (cut?.cost ?? 0), 0);
  },
});

type CableCost = (entry: BusEntry, laid: LaidBus) => number;

const cableCosts = (index: BoatIndex): CableCost => {
  const { prices, pins, cables } = index.boat;
  const bought = JSON.stringify([prices, pins, cables]);
  return (entry, laid) => cableCostOf({ index, entry, laid, bought });
};

const choicesOf = (cableCost: CableCost, { problem, layout, entry }: PlannedBus): BusChoices => {
  const price = layoutPrice(problem, layout);
  if (layout.status === 'pinned') return { price, tees: teesOf({ problem, layout }) };
  if (!['proven', 'gap', 'stopped'].includes(layout.status)) return { price };
  const next = nextOf(problem, layout);
  const own = { price, tees: teesOf({ problem, layout }), cableCost: cableCost(entry, { problem, layout }) };
  if (next === undefined) return own;
  const { grade, cost, status, walk } = next;
  const nextBest = {
    grade,
    cost,
    proven: status === 'proven',
    price: layoutPrice(problem, next),
    cableCost: cableCost({ ...entry, grade }, { problem, layout: next }),
    walk: walk.map((step) => ({ ...step, tees: [...step.tees] })),
  };
  return { ...own, nextBest };
};

/** One bus as planned: its problem and layout, and what the plan says of it. */
interface PlannedBus extends LaidBus {
  readonly entry: BusEntry;
}

/**
 * What each bus costs in its parts, and for each tee the nearest other places; where the plan itself found the layout, the
 * cheapest one with another trunk, and what the cable of both costs in pieces one can buy. By bus id.
 */
export const busChoices = ({
  index,
  buses,
}: {
  readonly index: BoatIndex;
  readonly buses: readonly PlannedBus[];
}): ReadonlyMap<string, BusChoices> => {
  const cableCost = cableCosts(index);
  return new Map(buses.map((bus) => [bus.entry.id, choicesOf(cableCost, bus)]));
};
