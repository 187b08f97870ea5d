import * as z from 'zod';
import { dottedIdSchema, idSchema } from './ids.ts';
import { readingSchema } from './sheet.ts';

/** Which port a reading is to come from where several give it: at one unit, or with `at` absent at every unit that is not named itself. */
export const chosenSourceSchema = z.strictObject({
  reading: readingSchema,
  instance: z.exactOptional(z.int().min(0).max(252)),
  at: z.exactOptional(idSchema),
  /** `kit.port` at which the reading begins */
  primary: dottedIdSchema,
});
export type ChosenSource = z.infer<typeof chosenSourceSchema>;

type Which = Pick<ChosenSource, 'reading' | 'instance' | 'at'>;

/** Whether two choices are for the same reading, instance and unit. */
export const isSameChoice = (a: Which, b: Which): boolean =>
  a.reading === b.reading && a.instance === b.instance && a.at === b.at;
