import type { Boat } from '../../core/boat/boat-schema.ts';
import { typicalPrices } from '../../core/facts/prices.ts';
import type { Cure } from '../../core/plan-shape.ts';

/** The currency of a boat's prices. */
export const currencyOf = ({ prices }: Pick<Boat, 'prices'>): string => prices?.currency ?? typicalPrices.currency;

/** What a cure costs in parts, rounded as such guesses deserve: "about 240 EUR in parts", or "no parts to buy". */
export const cureCostWords = ({ cost, edits }: Cure, currency: string): string => {
  if (edits.length === 0) return '';
  if (cost === undefined) return 'price to be asked';
  return cost === 0 ? 'no parts to buy' : `about ${Math.ceil(cost / 1000) * 10} ${currency} in parts`;
};

/** A cure with its price behind it: "Put Compass on Navigation bus (about 40 EUR in parts)." */
export const cureWords = (cure: Cure, currency: string): string => {
  const price = cureCostWords(cure, currency);
  return price === '' ? cure.says : `${cure.says.replace(/\.$/, '')} (${price}).`;
};
