import type { BusEntry } from '../../core/plan-shape.ts';
import { savedByNext } from './bus-price.ts';
import { printMoney } from './order-words.ts';
import { printCost } from './print-figure.ts';

/** What next-best words look up: the names of places. */
interface PlaceNames {
  readonly places: ReadonlyMap<string, { readonly name: string }>;
}

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** How the next trunk differs: the places it leaves out and those it takes in. */
const differsWords = ({ places }: PlaceNames, bus: BusEntry, walk: BusEntry['walk']): string => {
  const passed = (steps: BusEntry['walk']): Set<string> => new Set(steps.map(({ place }) => place));
  const [own, next] = [passed(bus.walk), passed(walk)];
  const nameOf = (ids: readonly string[]): string => listed(ids.map((id) => places.get(id)?.name ?? id));
  const [out, into] = [[...own].filter((place) => !next.has(place)), [...next].filter((place) => !own.has(place))];
  const parts = [
    ...(out.length === 0 ? [] : [`leaves out ${nameOf(out)}`]),
    ...(into.length === 0 ? [] : [`goes by ${nameOf(into)}`]),
  ];
  return parts.length === 0 ? 'takes the same places by other ways' : parts.join(' and ');
};

const settledWords = ({ cost, bound }: Pick<BusEntry['layout'], 'cost' | 'bound'>, currency: string): string => {
  if (bound === 0) return 'Settled by you; no other layout is looked for.';
  return cost === bound
    ? 'Settled by you; no other layout that keeps the limits is cheaper.'
    : `Settled by you; another layout could have saved ${printCost({ cost: cost - bound, currency })} at most.`;
};

const sureWords = ({ status, cost, bound }: BusEntry['layout'], currency: string): string => {
  switch (status) {
    case 'proven':
      return 'Cheapest by the prices and hours entered, proven.';
    case 'gap':
      return `By the prices and hours entered nothing can be cheaper by more than ${printCost({ cost: cost - bound, currency })}.`;
    case 'stopped':
      return `The search was stopped; another layout could save ${printCost({ cost: cost - bound, currency })} at most.`;
    case 'pinned':
      return settledWords({ cost, bound }, currency);
    case 'heuristic':
      return 'A quick layout, not yet compared with others.';
    case 'infeasible':
      return 'No layout that keeps every limit was found; this one comes nearest.';
  }
};

/**
 * How sure the layout of a bus is, and what comes next: its price, where its trunk differs, and whether it would be the
 * cheaper one once cable is bought in pieces.
 */
export const nextBestWords = (names: PlaceNames, bus: BusEntry, currency: string): string[] => {
  const { nextBest, layout } = bus;
  const sure = sureWords(layout, currency);
  if (nextBest === undefined) return [sure];
  const saved = savedByNext(bus);
  const more = printCost({ cost: nextBest.cost - layout.cost, currency });
  const grade = nextBest.grade === bus.grade ? '' : ` on ${nextBest.grade} cable`;
  const priced = nextBest.cost === layout.cost ? 'costs the same' : `costs ${more} more`;
  return [
    sure,
    `The next best${nextBest.proven ? '' : ' that was found'} ${priced}${grade}: its trunk ${differsWords(names, bus, nextBest.walk)}.`,
    ...(saved === undefined
      ? []
      : [
          `With cable bought in the pieces sold, the next best comes ${printMoney(Math.round(saved))} ${currency} cheaper.`,
        ]),
  ];
};
