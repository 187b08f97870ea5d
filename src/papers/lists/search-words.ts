import type { Layout, Problem } from '../../core/backbone/problem.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { currencyOf } from './cure-words.ts';
import { printCost } from './print-figure.ts';

/** Where a search for layouts stands: what it does, and what it has so far. */
export interface SearchWords {
  readonly says: string;
  /** price of the best layout so far and the price nothing can be under; absent while there is no layout that holds */
  readonly found?: string;
}

/** A search for the layouts of a boat, bus by bus. */
export interface SearchState {
  readonly boat: Pick<Boat, 'buses' | 'prices'>;
  readonly problem: Pick<Problem, 'bus'>;
  /** which of how many buses, counted from 1 */
  readonly turn: number;
  readonly of: number;
  /** the best layout of this bus so far */
  readonly layout?: Layout | undefined;
}

/** Says what a search does and what it has: "Looking for the cheapest way to lay Navigation bus.", "571.63 EUR so far; …". */
export const searchWords = ({ boat, problem, turn, of, layout }: SearchState): SearchWords => {
  const name = boat.buses.find(({ id }) => id === problem.bus)?.name ?? problem.bus;
  const says = `Looking for the cheapest way to lay ${name}${of === 1 ? '' : ` (${turn} of ${of})`}.`;
  if (layout === undefined || layout.status === 'infeasible') return { says };
  const currency = currencyOf(boat);
  const cost = printCost({ cost: layout.cost, currency });
  const bound = printCost({ cost: layout.bound, currency });
  return { says, found: `${cost} so far; none can be under ${bound}.` };
};
