import * as z from 'zod';
import { daySchema } from './day.ts';
import { idSchema } from './ids.ts';

/** In what the boat came out otherwise than planned. */
export const fittedKinds = ['place', 'length', 'route', 'wire', 'fuse', 'other'] as const;

const saidSchema = z.string().min(1).max(400);

/**
 * One difference between the plan and the boat as she was found after the work. `was` and `is` are words, so that they can
 * still be read when the plan has long become another; what counts in the plan stands with the unit or in the pins.
 */
export const fittedSchema = z.strictObject({
  id: idSchema,
  /** a line, a unit, a place, or `panel.circuit` */
  about: z.string().min(1).max(300),
  what: z.enum(fittedKinds),
  was: z.exactOptional(saidSchema),
  is: saidSchema,
  on: daySchema,
  by: z.exactOptional(z.string().min(1).max(200)),
  note: z.exactOptional(saidSchema),
});
export type Fitted = z.infer<typeof fittedSchema>;
