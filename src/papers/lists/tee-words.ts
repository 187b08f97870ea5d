import type { BusEntry } from '../../core/plan-shape.ts';
import { type EndNames, endWords } from './end-words.ts';
import { printCost } from './print-figure.ts';

type TeeEntry = NonNullable<BusEntry['tees']>[number];
type OtherTee = TeeEntry['others'][number];

const aPort = /\b[a-z][a-z0-9-]*\.[a-z][a-z0-9-]*\b/g;

const costWords = (costMore: number, currency: string): string => {
  if (costMore === 0) return 'for the same price';
  const cost = printCost({ cost: Math.abs(costMore), currency });
  return costMore > 0 ? `for ${cost} more` : `for ${cost} less`;
};

/** What another place of the trunk would mean for a tee: its drop, its price and the limits it would break. */
export const otherTeeWords = (
  names: EndNames,
  { place, dropM, costMore, breaks }: OtherTee,
  currency: string,
): string => {
  const from = `From ${names.places.get(place)?.name ?? place} it would be ${dropM.toFixed(2)} m, ${costWords(costMore, currency)}`;
  if (breaks.length === 0) return `${from}.`;
  const [first = '', ...others] = breaks.map((says) => says.replace(aPort, (port) => endWords(names, port)));
  const more =
    others.length === 0
      ? ''
      : ` ${others.length === 1 ? 'One limit more breaks' : `${others.length} limits more break`} too.`;
  return `${from}, but not within the limits: ${first}${more}`;
};

/** Where a tee stands. */
export const teePlaceWords = (names: EndNames, { place, dropM, others }: TeeEntry): string =>
  `Its tee stands at ${names.places.get(place)?.name ?? place}, with ${dropM.toFixed(2)} m of drop.${others.length === 0 ? ' No other place of the trunk could have it.' : ''}`;

/** Why a tee stands where it does: its drop, and what each of the nearest other places would cost and break. */
export const teeWords = (names: EndNames, tee: TeeEntry, currency: string): string[] => [
  teePlaceWords(names, tee),
  ...tee.others.map((other) => otherTeeWords(names, other, currency)),
];
