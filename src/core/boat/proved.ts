import * as z from 'zod';
import { daySchema } from './day.ts';
import { dottedIdSchema } from './ids.ts';
import { readingSchema } from './sheet.ts';

/** One reading that a recording proved: heard with data where it leaves its source. */
export const provedSchema = z.strictObject({
  reading: readingSchema,
  instance: z.exactOptional(z.int().min(0).max(252)),
  /** `kit.port` at which it was heard */
  from: dottedIdSchema,
  /** the day of the recording */
  on: daySchema,
});
export type Proved = z.infer<typeof provedSchema>;

/** What was proved of the boat as she is. */
export const proofSchema = z.strictObject({ proved: z.array(provedSchema) });

/** Whether two entries prove the same reading at the same port. */
export const isSameProof = (a: Omit<Proved, 'on'>, b: Omit<Proved, 'on'>): boolean =>
  a.reading === b.reading && a.instance === b.instance && a.from === b.from;
