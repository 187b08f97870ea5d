import * as z from 'zod';
import { exclusionIds, quoteTasks } from '../facts/quote-figures.ts';

const sentenceSchema = z.string().min(1).max(400);

const isOnce = (list: readonly { readonly task: string }[]): boolean =>
  new Set(list.map(({ task }) => task)).size === list.length;

/** Who does the work and on what terms; what is not said is as usual. */
export const quoteSchema = z.strictObject({
  by: z.exactOptional(z.enum(['professional', 'owner'])),
  /** whether the mast is stepped while cables are led in it; absent = up */
  mast: z.exactOptional(z.enum(['up', 'down'])),
  contingencyPct: z.exactOptional(z.number().min(0).max(200).meta({ unit: '% of the hours' })),
  /** hours of one of a task, in place of the usual ones */
  hours: z.exactOptional(
    z
      .array(
        z.strictObject({
          task: z.enum(quoteTasks),
          eachH: z.number().min(0).max(1000).meta({ unit: 'h' }),
          reason: sentenceSchema,
        }),
      )
      .refine(isOnce, { message: 'The hours of a task are given once.' }),
  ),
  /** usual exclusions that are part of this quote after all */
  includes: z.exactOptional(z.array(z.enum(exclusionIds))),
  /** further things that are not part of it, each a sentence */
  exclusions: z.exactOptional(z.array(sentenceSchema).max(40)),
  validDays: z.exactOptional(z.int().min(1).max(365).meta({ unit: 'days' })),
  terms: z.exactOptional(z.string().min(1).max(2000)),
});
export type QuoteTerms = z.infer<typeof quoteSchema>;
