import * as z from 'zod';
import { readingSchema } from './boat/sheet.ts';
import { cureSchema } from './cure-shape.ts';

// The part of a plan that tells what each single failure takes away.
const id = z.string();

/**
 * The ways in which one thing fails, about in the order of what they take: a bank fails or its main opens, a panel fails, its
 * main opens or its feeder is cut, a DC converter fails, a circuit opens, a unit fails, a terminator is lost, a tee breaks out
 * of the trunk, a drop is shorted, a cable is cut or comes off, a way is cut with all that lies in it, a mast comes down.
 */
export const failureKinds = [
  'bank',
  'main',
  'panel',
  'feeder',
  'converter',
  'fuse',
  'unit',
  'terminator',
  'tee',
  'short',
  'line',
  'way',
  'mast',
] as const;
export const failureKindSchema = z.enum(failureKinds);
export type FailureKind = z.infer<typeof failureKindSchema>;

/** What fails, and how. `fails`: `panel.circuit`, a bank, panel, converter, unit, line, `bus/tee`, `bus/end@place`, way or place. */
export const failureSchema = z.strictObject({ fails: id, how: failureKindSchema });
export type Failure = z.infer<typeof failureSchema>;

/** A reading that goes off a screen. `perhaps` where the bus that brings it is left with one terminator: on a short bus it may stay. */
export const lossSchema = z.strictObject({
  reading: readingSchema,
  instance: z.exactOptional(z.int()),
  at: id,
  perhaps: z.exactOptional(z.boolean()),
});
export type Loss = z.infer<typeof lossSchema>;

/**
 * One failure and what it takes off which screen. `also`: failures that do just the same. `dark`: units that fail or lose
 * every feed; `still`: lines that carry nothing any more; `doubtful`: buses left with one terminator.
 */
export const blackoutEntrySchema = failureSchema.extend({
  also: z.exactOptional(z.array(failureSchema)),
  loses: z.array(lossSchema),
  dark: z.array(id),
  still: z.array(id),
  doubtful: z.exactOptional(z.array(id)),
});
export type BlackoutEntry = z.infer<typeof blackoutEntrySchema>;

export const vitalIds = ['depth', 'heading', 'position', 'radio'] as const;
export type VitalId = (typeof vitalIds)[number];

/** A failure after which no screen has it, or nobody can talk. `perhaps` as of a loss; `cure`: which of the cures frees it. */
const singlePointSchema = failureSchema.extend({
  perhaps: z.exactOptional(z.boolean()),
  cure: z.exactOptional(z.int()),
});
export type SinglePoint = z.infer<typeof singlePointSchema>;

/**
 * The failures that take depth, position or heading off every screen, or the last radio. `at`: screens that have it, or the
 * radios; `leftWith`: units that need no feed and serve in its place whatever fails; `carry`: what a person has at hand for
 * it. Cures were tried; each point names the cheapest that frees it.
 */
export const vitalEntrySchema = z.strictObject({
  of: z.enum(vitalIds),
  at: z.array(id),
  points: z.array(singlePointSchema),
  leftWith: z.array(id),
  carry: z.string(),
  cures: z.array(cureSchema),
});
export type VitalEntry = z.infer<typeof vitalEntrySchema>;

/** What a plan says of failures. */
export const blackoutEntriesSchema = {
  blackouts: z.array(blackoutEntrySchema),
  vitals: z.array(vitalEntrySchema),
};
export type BlackoutParts = { readonly blackouts: BlackoutEntry[]; readonly vitals: VitalEntry[] };
