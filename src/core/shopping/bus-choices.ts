import { busLines } from '../backbone/bus-lines.ts';
import { layoutPrice } from '../backbone/layout-price.ts';
import type { Layout, Problem } from '../backbone/problem.ts';
import { runnerUpLayout } from '../backbone/solve-layout.ts';
import { teeChoices } from '../backbone/tee-choices.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import type { BusEntry } from '../plan-shape.ts';
import { makeRouter } from '../ways/routes.ts';
import { cutLines } from './cut-lines.ts';
import type { OrderInput } from './line-cutter.ts';
import { priceList } from './price-list.ts';
import type { LaidBus } from './trunk-as-bought.ts';

/** What a bus costs in its parts, and what else could have been done: the layout that comes next, other places for each tee. */
export type BusChoices = Pick<BusEntry, 'price' | 'nextBest' | 'tees' | 'cableCost'>;

/** Work for finding the layout that comes next: enough for a proof on most boats, little enough for an edit. */
const nextWork = 20_000;

interface Looked {
  readonly next: Layout | undefined;
  readonly tees: NonNullable<BusEntry['tees']>;
}

/** What was found for a layout before: it hangs on nothing but the layout and its problem, whose hash it bears. */
const lookedAt = new WeakMap<Layout, Looked>();

const look = (problem: Problem, layout: Layout): Looked => {
  const known = lookedAt.get(layout);
  if (known !== undefined) return known;
  const found = {
    next: runnerUpLayout(problem, layout, { work: nextWork }),
    tees: teeChoices(problem, layout).map(({ others, ...tee }) => ({
      ...tee,
      others: others.map(({ breaks, ...other }) => ({ ...other, breaks: [...breaks] })),
    })),
  };
  lookedAt.set(layout, found);
  return found;
};

/** What the cable of a bus costs in the pieces one can buy, in hundredths. */
type CableCost = (entry: BusEntry, laid: LaidBus) => number;

const cableCosts = (index: BoatIndex): CableCost => {
  const [prices, router] = [priceList(index.boat), makeRouter(index)];
  return (entry, laid) => {
    const { lines } = busLines({ index, router, ...laid });
    const cable = lines.filter(({ kind }) => kind !== 'feed');
    const input: OrderInput = { index, prices, buses: new Map([[entry.id, entry]]) };
    return cutLines(input, { lines: cable, laid: [laid] }).reduce((sum, { cut }) => sum + (cut?.cost ?? 0), 0);
  };
};

const choicesOf = (cableCost: CableCost, { problem, layout, entry }: PlannedBus): BusChoices => {
  const price = layoutPrice(problem, layout);
  if (!['proven', 'gap', 'stopped'].includes(layout.status)) return { price };
  const { next, tees } = look(problem, layout);
  const own = { price, tees, cableCost: cableCost(entry, { problem, layout }) };
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
 * What each bus costs in its parts; and, where the plan itself found its layout, the cheapest layout with another trunk,
 * what the cable of both costs in pieces one can buy, and for each tee the nearest other places. By bus id.
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
