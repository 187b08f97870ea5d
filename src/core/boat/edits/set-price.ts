import * as z from 'zod';
import { typicalPrices } from '../../facts/prices.ts';
import { type Boat, itemSchema, pricesSchema } from '../boat-schema.ts';
import { defineEdit } from './define-edit.ts';

type Prices = NonNullable<Boat['prices']>;

/** A list with every usual price in it, as it counts where a boat file has none. */
const usualPrices = (): Prices => {
  const { source: _, ...usual } = typicalPrices;
  return pricesSchema.parse(usual);
};

const itemPriceSchema = pricesSchema.shape.hour;

/** Sets the price of one item of the shopping list, or of an hour of work; an item without a price is forgotten. */
export const setPrice = defineEdit({
  id: 'set-price',
  params: z.union([
    z.strictObject({ of: z.literal('hour'), each: itemPriceSchema }),
    z.strictObject({ of: z.literal('item'), item: itemSchema, each: z.exactOptional(itemPriceSchema) }),
  ]),
  title: (given) =>
    given.of === 'hour'
      ? `An hour of work costs ${(given.each / 100).toFixed(2)}.`
      : given.each === undefined
        ? `${given.item} has no price of your own any longer.`
        : `${given.item} costs ${(given.each / 100).toFixed(2)}.`,
  change: (boat, given) => {
    const prices = boat.prices ?? usualPrices();
    if (given.of === 'hour') boat.prices = { ...prices, hour: given.each };
    else {
      const { [given.item]: _, ...others } = prices.items ?? {};
      const items = given.each === undefined ? others : { ...others, [given.item]: given.each };
      const { items: __, ...rest } = prices;
      boat.prices = Object.keys(items).length === 0 ? rest : { ...rest, items };
    }
  },
});
