import * as z from 'zod';
import { idSchema } from './ids.ts';

/** Days that every boat has, by the hours common practice gives each kind of unit. */
export const standardDays = ['anchor', 'under-way-day', 'under-way-night', 'alongside'] as const;
export const standardDaySchema = z.enum(standardDays);
export type StandardDay = z.infer<typeof standardDaySchema>;

const oneThing = ({ unit, kind }: { unit?: string; kind?: string }): boolean =>
  (unit === undefined) !== (kind === undefined);

/** Hours of a day that one unit runs, or every unit of one kind of sheet. What is said of a unit comes before its kind. */
const runningSchema = z
  .strictObject({
    unit: z.exactOptional(idSchema),
    kind: z.exactOptional(idSchema),
    hours: z.number().min(0).max(24).meta({ unit: 'h' }),
  })
  .refine(oneThing, { message: 'Give exactly one of unit, kind.' });

/** A day of the person's own: like a standard one, but for the hours said here. */
export const ownDaySchema = z.strictObject({
  id: idSchema,
  name: z.string().min(1).max(120),
  like: standardDaySchema,
  hours: z.array(runningSchema),
  /** so many such days follow each other before the bank is charged again; absent = 1 */
  chargedAfter: z.exactOptional(z.number().positive().max(60).meta({ unit: 'days' })),
});
export type OwnDay = z.infer<typeof ownDaySchema>;
