import type { BusEntry } from '../../core/plan-shape.ts';
import { printMoney } from './order-words.ts';
import { printCount } from './print-figure.ts';

/** One line of the price of a bus: what for, how much of it, and what it costs as laid out and in the layout that comes next. */
export interface PriceRow {
  readonly name: string;
  readonly amount: string;
  readonly own: string;
  /** absent where no other layout is known */
  readonly next?: string;
}

type Part = NonNullable<BusEntry['price']>[number];

const names: Readonly<Record<Part['part'], string>> = {
  trunk: 'trunk',
  drops: 'drops',
  tees: 'tees',
  terminators: 'terminators',
  feed: 'feed and its lead',
  work: 'work on the ways',
};
const order: readonly Part['part'][] = ['trunk', 'drops', 'tees', 'terminators', 'feed', 'work'];

const amountOf = ({ count, lengthM }: Part): string => {
  if (count !== undefined) return printCount(count, 'piece');
  return lengthM === undefined ? '' : `${lengthM.toFixed(2)} m`;
};

const inHundredths = (cost: number): number => cost / 1000;
const sumOf = (parts: readonly Part[]): number => parts.reduce((sum, { cost }) => sum + cost, 0);
const isCable = ({ part }: Part): boolean => part === 'trunk' || part === 'drops';

/** What a bus costs with its cable in the pieces one can buy, in hundredths. */
const asBought = (price: readonly Part[], cableCost: number): number =>
  cableCost + inHundredths(sumOf(price.filter((part) => !isCable(part))));

/** What the layout that comes next saves once its cable is bought in pieces, in hundredths; absent where it saves nothing. */
export const savedByNext = ({ price, cableCost, nextBest }: BusEntry): number | undefined => {
  if (price === undefined || cableCost === undefined || nextBest === undefined) return undefined;
  const saved = asBought(price, cableCost) - asBought(nextBest.price, nextBest.cableCost);
  return saved > 0 ? saved : undefined;
};

/** The price of a bus in its parts, with their sum, and with the cable in pieces one can buy; beside the layout that comes next. */
export const priceRows = ({ price = [], cableCost, nextBest }: BusEntry): PriceRow[] => {
  const own = new Map(price.map((part) => [part.part, part]));
  const next = new Map((nextBest?.price ?? []).map((part) => [part.part, part]));
  const money = (hundredths: number): string => printMoney(Math.round(hundredths));
  const beside = (hundredths: number | undefined): Pick<PriceRow, 'next'> =>
    nextBest === undefined ? {} : { next: money(hundredths ?? 0) };
  const parts = order.flatMap((part): PriceRow[] => {
    const [one, other] = [own.get(part), next.get(part)];
    const some = one ?? other;
    if (some === undefined) return [];
    return [
      {
        name: names[part],
        amount: one === undefined ? '' : amountOf(one),
        own: money(inHundredths(one?.cost ?? 0)),
        ...beside(inHundredths(other?.cost ?? 0)),
      },
    ];
  });
  if (parts.length === 0) return [];
  const sum: PriceRow = {
    name: 'together, cable by the metre',
    amount: '',
    own: money(inHundredths(sumOf(price))),
    ...beside(inHundredths(nextBest?.cost ?? 0)),
  };
  if (cableCost === undefined) return [...parts, sum];
  const bought: PriceRow = {
    name: 'together, cable in pieces sold',
    amount: '',
    own: money(asBought(price, cableCost)),
    ...beside(nextBest === undefined ? undefined : asBought(nextBest.price, nextBest.cableCost)),
  };
  return [...parts, sum, bought];
};
