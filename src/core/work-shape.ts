import * as z from 'zod';
import { daySchema } from './boat/day.ts';
import { essentialFunctions } from './facts/essential-functions.ts';
import { jobKinds } from './facts/job-kinds.ts';

// The part of a plan that tells what is done, in which order, by whom, and what is dark meanwhile. Days are counted from 0 in
// each phase; half hours (`slot`) from the beginning of the day's work.
const id = z.string();
const hours = z.number().meta({ unit: 'h' });
const slots = z.int().meta({ unit: 'half hours' });
const day = z.int().meta({ unit: 'days of the phase, from 0' });
const functionSchema = z.enum(essentialFunctions);

export const skillSchema = z.enum(['aloft', 'electrics', 'radio', 'yard']);

/** Why a job waits for another: what is said of it stands in words elsewhere. */
export const waitReasons = [
  'label-first',
  'saved-first',
  'bore-full',
  'same-hole',
  'in-reach',
  'way-open',
  'fed-by',
  'fixed-first',
  'cabled-first',
  'cured-first',
  'powered-first',
  'updated-first',
  'calibrated-first',
  'tried-first',
  'safe-first',
  'papers-first',
  'person',
] as const;

const afterSchema = z.strictObject({
  job: id,
  why: z.enum(waitReasons),
  /** between the end of that and the beginning of this, by the clock */
  waitH: z.exactOptional(hours),
});

/** One job. `hoursH` are for all its people together, by the usual hours; `slots` is how long it lasts for who does it. */
export const jobSchema = z.strictObject({
  id,
  kind: z.enum(jobKinds),
  phase: z.int(),
  /** units, lines, ways, panels, buses it is about */
  about: z.array(id),
  place: z.exactOptional(id),
  hoursH: z.strictObject({ least: hours, most: hours }),
  slots,
  people: z.union([z.literal(1), z.literal(2)]),
  needs: z.array(skillSchema),
  /** what is done in it, in order, by the name facts have of it */
  steps: z.array(id),
  tools: z.array(id),
  materials: z.array(z.strictObject({ item: id, count: z.number() })),
  cautions: z.array(id),
  after: z.array(afterSchema),
  /** essential functions that are dark while it lasts, whatever the order */
  takes: z.array(functionSchema),
  state: z.exactOptional(z.enum(['afloat', 'ashore'])),
  mast: z.exactOptional(z.enum(['up', 'down'])),
  outside: z.boolean(),
  aloft: z.boolean(),
  /** jobs that may not fall on one day with it, and why somebody could be hurt */
  apart: z.array(id),
  /** something not there yet that it hangs on: an item or a paper, and the day it comes where that is known */
  waitsFor: z.array(z.strictObject({ what: z.enum(['item', 'paper']), id, on: z.exactOptional(daySchema) })),
  /** how long it is only waited, without hands: a paper, a cure */
  waitH: z.exactOptional(hours),
  /** as the person said in the boat file */
  name: z.exactOptional(z.string()),
  day: z.exactOptional(daySchema),
  hand: z.exactOptional(id),
  leftOut: z.exactOptional(z.string()),
  lockedOff: z.exactOptional(z.boolean()),
  source: id,
});
export type Job = z.infer<typeof jobSchema>;

/** An essential function, what it is had by, and what is at hand when it is dark. A way holds from the end of all `from` until the first of `until` begins. */
export const watchedSchema = z.strictObject({
  function: functionSchema,
  hard: z.boolean(),
  ways: z.array(z.strictObject({ by: z.array(id), from: z.array(id), until: z.array(id) })),
  /** nobody said what gives it, so that every job at a panel is taken to put it out */
  unknown: z.exactOptional(z.literal(true)),
});
export type Watched = z.infer<typeof watchedSchema>;

const spotSchema = z.strictObject({ day, slot: slots });
const startSchema = z.strictObject({ job: id, day, slot: slots, lastDay: day, lastSlot: slots, hands: z.array(id) });
export type JobStart = z.infer<typeof startSchema>;

/** A time in which a function is dark; `hoursH` counts only hours that matter: afloat, when she must be able to move. */
const darkSchema = z.strictObject({ function: functionSchema, from: spotSchema, to: spotSchema, hoursH: hours });
export type Dark = z.infer<typeof darkSchema>;

const costSchema = z.strictObject({ darkH: hours, lastDay: day, ascents: z.int() });
export type OrderCost = z.infer<typeof costSchema>;

/** The order found: who does what when. `plain`: the same jobs one after another as listed. */
export const workOrderSchema = z.strictObject({
  hash: id,
  starts: z.array(startSchema),
  dark: z.array(darkSchema),
  cost: costSchema,
  bound: costSchema,
  plain: z.exactOptional(costSchema),
  status: z.enum(['proven', 'gap', 'stopped', 'quick']),
  work: z.int(),
});
export type WorkOrder = z.infer<typeof workOrderSchema>;

export const stuckKinds = [
  'circle',
  'nobody-can',
  'never-ashore',
  'never-afloat',
  'mast-never-down',
  'mast-never-up',
  'comes-too-late',
  'dark-though-never',
  'pins-clash',
  'done-by-too-early',
  'no-daylight',
  'too-few-days',
] as const;

/** Why there is no order, and the least that would have to give: each `relax` alone is enough. */
const stuckSchema = z.strictObject({
  why: z.enum(stuckKinds),
  jobs: z.array(id),
  functions: z.array(functionSchema),
  relax: z.array(
    z.strictObject({
      what: z.enum(['days', 'haul-out-days', 'mast-days', 'hand', 'unpin', 'temporary-feed', 'earlier', 'leave-out']),
      about: z.array(id),
      /** days more, or days earlier */
      days: z.exactOptional(z.int()),
    }),
  ),
});
export type Stuck = z.infer<typeof stuckSchema>;

/** One day as the calendar has it. */
const calendarDaySchema = z.strictObject({
  day,
  date: z.exactOptional(daySchema),
  hands: z.array(id),
  afloat: z.boolean(),
  mast: z.enum(['up', 'down']),
  foul: z.boolean(),
  moves: z.boolean(),
  left: z.boolean(),
});
export type CalendarDay = z.infer<typeof calendarDaySchema>;

/** The work of one phase. Exactly one of `order` and `stuck`. */
export const phaseWorkSchema = z.strictObject({
  phase: z.int(),
  perDay: slots,
  /** half hour after midnight at which work begins */
  from: slots,
  hands: z.array(z.strictObject({ id, name: z.string(), can: z.array(skillSchema), pace: z.number() })),
  days: z.array(calendarDaySchema),
  /** days ashore or with the mast down that nobody entered, and that are taken because jobs want them */
  taken: z.array(z.strictObject({ what: z.enum(['ashore', 'mast-down']), from: day, to: day })),
  jobs: z.array(jobSchema),
  functions: z.array(watchedSchema),
  order: z.exactOptional(workOrderSchema),
  stuck: z.exactOptional(stuckSchema),
  /** the last day to order an item so that it is there when it is wanted */
  orderBy: z.array(
    z.strictObject({ item: id, job: id, wantedOn: day, leadDays: z.int(), day: day, on: z.exactOptional(daySchema) }),
  ),
});
export type PhaseWork = z.infer<typeof phaseWorkSchema>;

/** What becomes of a unit that goes. */
export const leavingEntrySchema = z.strictObject({
  unit: id,
  to: z.exactOptional(z.enum(['sell', 'spare', 'recycle'])),
  cables: z.array(id),
  /** what is done before it leaves, in order, by the name facts have of it; `byMaker` those of them that only its maker can do */
  steps: z.array(id),
  byMaker: z.array(id),
  /** whether its serial number is written down, and whether there is a photo of it or of its place */
  serial: z.boolean(),
  photo: z.boolean(),
  /** the job after which it may go */
  after: id,
});
export type LeavingEntry = z.infer<typeof leavingEntrySchema>;

/** What a plan says of the work; absent in plans made in haste. */
export const workEntriesSchema = {
  work: z.exactOptional(z.strictObject({ phases: z.array(phaseWorkSchema), leaving: z.array(leavingEntrySchema) })),
};
export type PlanWork = NonNullable<z.infer<z.ZodObject<typeof workEntriesSchema>>['work']>;
