import type { Boat } from '../../core/boat/boat-schema.ts';
import { shortName } from '../../core/boat/short-name.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import type { WiringEntry } from '../../core/proposal-shape.ts';
import { currencyOf } from './cure-words.ts';
import { printMoney } from './order-words.ts';

/** One way to wire a boat, in words. */
export interface WiringRow {
  readonly id: string;
  readonly says: string;
  readonly cost: string;
  readonly proof: string;
  readonly loses: string;
}

const missed = (boat: Boat, { reading, instance, at }: WiringEntry['misses'][number]): string => {
  const name = boat.kit.find(({ id }) => id === at)?.name ?? at;
  return `${readingName({ reading, ...(instance === undefined ? {} : { instance }) })} at ${shortName(name)}`;
};

const losesOf = (boat: Boat, { misses }: WiringEntry): string => {
  const musts = misses.filter(({ must }) => must).map((one) => missed(boat, one));
  const nice = misses.filter(({ must }) => !must).map((one) => missed(boat, one));
  if (misses.length === 0) return 'Everything that is needed arrives.';
  return [
    ...(musts.length === 0 ? [] : [`Does not bring what must arrive: ${musts.join(', ')}.`]),
    ...(nice.length === 0 ? [] : [`Leaves out: ${nice.join(', ')}.`]),
  ].join(' ');
};

/** Ways to wire a boat side by side, the cheapest of those that lose least first. */
export const wiringRows = (boat: Boat, wirings: readonly WiringEntry[]): WiringRow[] =>
  [...wirings]
    .sort((a, b) => {
      const [one, other] = [a, b].map(({ misses }) => misses.filter(({ must }) => must).length);
      return (one ?? 0) - (other ?? 0) || a.cost - b.cost;
    })
    .map((wiring) => ({
      id: wiring.id,
      says: wiring.says,
      cost: `${printMoney(wiring.cost)} ${currencyOf(boat)}`,
      proof: wiring.proven
        ? 'nothing cheaper does as much'
        : `at least ${printMoney(wiring.bound)} ${currencyOf(boat)}`,
      loses: losesOf(boat, wiring),
    }));
