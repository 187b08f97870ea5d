import type { Boat } from '../../core/boat/boat-schema.ts';
import { typicalPrices } from '../../core/facts/prices.ts';
import type { Cure } from '../../core/plan-shape.ts';

/** The currency of a boat's prices. */
export const currencyOf = ({ prices }: Pick<Boat, 'prices'>): string => prices?.currency ?? typicalPrices.currency;

/**
 * What a cure costs in parts, rounded as such guesses deserve: "about 240 EUR in parts", "no parts to buy", "about 50 EUR
 * less"; empty where it buys nothing, as where it only says how things are aboard.
 */
export const cureCostWords = ({ cost, unpriced }: Cure, currency: string): string => {
  if (cost === undefined) return unpriced === true ? 'price to be asked' : '';
  if (cost < 0) return `about ${Math.round(-cost / 1000) * 10} ${currency} less`;
  return cost === 0 ? 'no parts to buy' : `about ${Math.ceil(cost / 1000) * 10} ${currency} in parts`;
};

/** A cure with its price behind it: "Put Compass on Navigation bus (about 40 EUR in parts)." */
export const cureWords = (cure: Cure, currency: string): string => {
  const price = cureCostWords(cure, currency);
  return price === '' ? cure.says : `${cure.says.replace(/\.$/, '')} (${price}).`;
};
