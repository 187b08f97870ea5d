import * as z from 'zod';
import { essentialFunctions, suppliedFunctions } from '../facts/essential-functions.ts';
import { atMostOnce } from './at-most-once.ts';
import { daySchema } from './day.ts';
import { dottedIdSchema, idSchema } from './ids.ts';

const nameSchema = z.string().min(1).max(120);
const sentenceSchema = z.string().min(1).max(400);
/** A job by the name that the plan gives it, for example `take-out:old-plotter`. */
const jobSchema = z.string().min(1).max(300);

/** Days from one to another, both of them in it. */
export const daysSpanSchema = z
  .strictObject({ from: daySchema, to: daySchema })
  .refine(({ from, to }) => from <= to, { message: 'The first day comes before the last.' });
export type DaysSpan = z.infer<typeof daysSpanSchema>;
const spansSchema = z.array(daysSpanSchema).max(100);

export const weekdays = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;

/** Somebody who works. `pace`: times the usual hours that this person takes. */
export const handSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  is: z.enum(['owner', 'professional', 'helper']),
  pace: z.exactOptional(z.number().min(0.25).max(4).meta({ unit: 'times the usual hours' })),
  /** what this person may or can do, beyond plain work */
  can: z.exactOptional(z.array(z.enum(['aloft', 'electrics', 'radio', 'yard'])).max(4)),
  /** days on which this person is not there */
  away: z.exactOptional(spansSchema),
});
export type Hand = z.infer<typeof handSchema>;

/** What gives an essential function: a circuit, as `panel.circuit`, or a bank; or that she has none. */
const essentialSchema = z
  .strictObject({
    function: z.enum(suppliedFunctions),
    on: z.exactOptional(z.array(z.union([dottedIdSchema, idSchema])).min(1)),
    none: z.exactOptional(z.literal(true)),
  })
  .refine(({ on, none }) => (on === undefined) !== (none === undefined), {
    message: 'Say what it hangs on, or that she has none.',
  });
export type Essential = z.infer<typeof essentialSchema>;

/** What a person says of one job of the plan, in place of what is usual. */
const ownOfJobSchema = z.strictObject({
  job: jobSchema,
  /** the day on which it begins, come what may */
  day: z.exactOptional(daySchema),
  hand: z.exactOptional(idSchema),
  hoursH: z.exactOptional(z.number().min(0).max(1000).meta({ unit: 'h' })),
  /** it is not done, and why */
  leftOut: z.exactOptional(sentenceSchema),
  /** further jobs it waits for */
  after: z.exactOptional(z.array(jobSchema).min(1).max(40)),
  /** what it could hurt is switched off, locked and tagged while it lasts */
  lockedOff: z.exactOptional(z.literal(true)),
});
export type OwnOfJob = z.infer<typeof ownOfJobSchema>;

/** A job of the person's own. */
const ownJobSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  hoursH: z.number().min(0).max(1000).meta({ unit: 'h' }),
  phase: z.exactOptional(z.int().min(1).max(9)),
  place: z.exactOptional(idSchema),
  people: z.exactOptional(z.union([z.literal(1), z.literal(2)])),
  after: z.exactOptional(z.array(jobSchema).min(1).max(40)),
  state: z.exactOptional(z.enum(['afloat', 'ashore'])),
  outside: z.exactOptional(z.literal(true)),
  /** it makes or opens a hole below the waterline, so she stands ashore unless it says otherwise */
  throughHull: z.exactOptional(z.literal(true)),
  /** what is dark while it lasts */
  takes: z.exactOptional(z.array(z.enum(essentialFunctions)).min(1)),
});
export type OwnJob = z.infer<typeof ownJobSchema>;

/** Where a unit that goes ends up, and the cables that go with it. */
const leavingSchema = z.strictObject({
  unit: idSchema,
  to: z.enum(['sell', 'spare', 'recycle']),
  with: z.exactOptional(z.array(idSchema).min(1)),
});
export type Leaving = z.infer<typeof leavingSchema>;

/** Who works when, what the calendar allows, and what a person settled of single jobs. */
export const workSchema = z.strictObject({
  /** first day of work of each phase; phases that are not named follow the one before */
  starts: z.exactOptional(
    z
      .array(z.strictObject({ phase: z.int().min(1).max(9), on: daySchema }))
      .refine(...atMostOnce<{ phase: number }>(({ phase }) => String(phase), 'A phase starts once.')),
  ),
  hoursADay: z.exactOptional(z.number().min(1).max(16).meta({ unit: 'h' })),
  /** hour of the clock at which a day's work begins */
  fromH: z.exactOptional(z.number().min(0).max(22).meta({ unit: 'h' })),
  restDays: z.exactOptional(z.array(z.enum(weekdays)).max(6)),
  hands: z.exactOptional(
    z
      .array(handSchema)
      .min(1)
      .max(12)
      .refine(...atMostOnce<Hand>(({ id }) => id, 'A hand stands once.')),
  ),
  /** days on which she is out of the water, and on which her mast is down */
  ashore: z.exactOptional(spansSchema),
  mastDown: z.exactOptional(spansSchema),
  /** days on which nobody can work outside */
  foul: z.exactOptional(spansSchema),
  /** days on which she must be able to move; absent = on all of them while afloat */
  moves: z.exactOptional(spansSchema),
  /** days on which nobody is aboard */
  left: z.exactOptional(spansSchema),
  /** hours of the clock between which there is light outside */
  light: z.exactOptional(
    z
      .strictObject({
        fromH: z.number().min(0).max(24).meta({ unit: 'h' }),
        toH: z.number().min(0).max(24).meta({ unit: 'h' }),
      })
      .refine(({ fromH, toH }) => fromH < toH, { message: 'Light begins before it ends.' }),
  ),
  doneBy: z.exactOptional(daySchema),
  aisWanted: z.exactOptional(z.boolean()),
  essentials: z.exactOptional(
    z.array(essentialSchema).refine(...atMostOnce<Essential>((one) => one.function, 'A function stands once.')),
  ),
  jobs: z.exactOptional(
    z
      .array(ownOfJobSchema)
      .max(2000)
      .refine(...atMostOnce<OwnOfJob>(({ job }) => job, 'A job stands once.')),
  ),
  own: z.exactOptional(z.array(ownJobSchema).max(500)),
  leaving: z.exactOptional(
    z.array(leavingSchema).refine(...atMostOnce<Leaving>(({ unit }) => unit, 'A unit that goes stands once.')),
  ),
});
export type Work = z.infer<typeof workSchema>;
