import * as z from 'zod';
import { daySchema } from './day.ts';

export const standings = ['planned', 'fitted'] as const;

/** A set of papers that was given to somebody, and the boat it was made from, so that it can be made again. */
export const revisionSchema = z.strictObject({
  /** A, B, C …; printed on every sheet */
  mark: z.string().regex(/^[A-Z]{1,2}$/, 'A revision is marked with one or two capital letters, for example A.'),
  standing: z.enum(standings),
  on: daySchema,
  by: z.exactOptional(z.string().min(1).max(200)),
  /** what it is for or what changed, in a sentence */
  says: z.string().min(1).max(400),
  /** the boat file as it stood, without its revisions: packed, in hexadecimal digits */
  boat: z
    .string()
    .max(2_000_000)
    .regex(/^([0-9a-f]{2})+$/, 'A kept boat is pairs of hexadecimal digits.'),
});
export type Revision = z.infer<typeof revisionSchema>;

export const revisionsSchema = z
  .array(revisionSchema)
  .max(100)
  .refine((revisions) => new Set(revisions.map(({ mark }) => mark)).size === revisions.length, {
    message: 'A mark stands for one revision only.',
  });
