import * as z from 'zod';

/**
 * Something that closes a gap. `edits` are the changes of the boat file that do it, in their order and as one step; with
 * them in it the reading was seen to arrive and no other lost. None where a person has to look something up first.
 */
export const cureSchema = z.strictObject({
  says: z.string(),
  edits: z.array(z.strictObject({ edit: z.string(), params: z.record(z.string(), z.unknown()) })),
  /** parts to buy, where a price of each is known */
  cost: z.exactOptional(z.int().meta({ unit: 'hundredths of the currency' })),
  /** among the parts to buy is one whose price is not known; absent with `cost`, and where nothing is to be bought */
  unpriced: z.exactOptional(z.literal(true)),
});
export type Cure = z.infer<typeof cureSchema>;
