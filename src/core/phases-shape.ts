import * as z from 'zod';
import { gradeSchema } from './boat/boat-schema.ts';
import { readingSchema } from './boat/sheet.ts';
import { cureSchema } from './cure-shape.ts';
import { shoppingKinds } from './facts/shopping-kinds.ts';

// The part of a plan that tells how she stands after each phase of the refit, and what the phases cost.
const id = z.string();
const phase = z.int();
const metres = z.number().meta({ unit: 'm' });
const amps = z.number().meta({ unit: 'A' });
const volts = z.number().meta({ unit: 'V' });
const squareMm = z.number().meta({ unit: 'mm²' });
const money = z.int().meta({ unit: 'hundredths of the currency' });

const phaseReadingSchema = z.strictObject({
  reading: readingSchema,
  instance: z.exactOptional(z.int()),
  at: id,
  must: z.boolean(),
});

/** A need whose screen is aboard and that is not met; `from`: the first later phase that meets it. */
const phaseMissingSchema = phaseReadingSchema.extend({
  seenBefore: z.boolean(),
  from: z.exactOptional(phase),
});
export type PhaseMissing = z.infer<typeof phaseMissingSchema>;

/** A bus laid out for what is aboard; `tees`: where each tee stands, `spare` for those left free. */
const phaseBusSchema = z.strictObject({
  id,
  grade: gradeSchema,
  lengthM: metres,
  longestDropM: metres,
  devices: z.int(),
  len: z.int(),
  ends: z.tuple([id, id]),
  lowestV: z.exactOptional(volts),
  spares: z.array(z.strictObject({ place: id, count: z.int() })),
  broken: z.array(z.string()),
});
export type PhaseBus = z.infer<typeof phaseBusSchema>;

/** A feed as this phase loads it; `later`: the wire and the fuse of the last phase, where they are larger. */
const phaseFeedSchema = z.strictObject({
  line: id,
  loadA: amps,
  areaMm2: squareMm,
  fuseA: z.exactOptional(amps),
  later: z.exactOptional(z.strictObject({ loadA: amps, areaMm2: squareMm, fuseA: z.exactOptional(amps) })),
});
export type PhaseFeed = z.infer<typeof phaseFeedSchema>;

/** An item bought in one phase, or over all of them beyond what the work done at once takes. */
const phaseItemSchema = z.strictObject({
  id,
  item: z.string(),
  kind: z.enum(shoppingKinds),
  count: z.number(),
  by: z.enum(['piece', 'metre']),
  each: z.exactOptional(money),
});
export type PhaseItem = z.infer<typeof phaseItemSchema>;

/** A sum of items: those of unknown price are counted only. */
const orderSumSchema = z.strictObject({ cost: money, unpriced: z.int() });
export type PhaseSum = z.infer<typeof orderSumSchema>;

/** She as she stands after one phase, planned as a whole boat, and what is bought for it beyond what was bought before. */
const phaseEntrySchema = z.strictObject({
  phase,
  comes: z.array(id),
  goes: z.array(id),
  arrives: z.array(phaseReadingSchema),
  missing: z.array(phaseMissingSchema),
  buses: z.array(phaseBusSchema),
  loads: z.array(z.strictObject({ from: id, typicalA: amps, mostA: amps })),
  feeds: z.array(phaseFeedSchema),
  /** converters and multiplexers aboard, with the readings that pass them */
  converters: z.array(z.strictObject({ kit: id, for: z.array(z.strictObject({ reading: readingSchema, at: id })) })),
  buy: z.array(phaseItemSchema),
  ...orderSumSchema.shape,
});
export type PhaseEntry = z.infer<typeof phaseEntrySchema>;

/** A change that was tried: `saves` is what phasing costs less with it. */
const phaseCureSchema = cureSchema.extend({ saves: money });

/**
 * Something to do in phase `phase` for what comes in phase `until`: a tee left free at a place, a messenger line in a way, a
 * wider conduit, a circuit kept free, a plug kept free. `now` and `later`: parts and hours, where known; `closed`: the way is
 * opened for hours, or is a mast.
 */
const provideSchema = z.strictObject({
  id,
  does: z.enum(['tee', 'messenger', 'conduit', 'circuit', 'plug']),
  at: id,
  phase,
  until: phase,
  for: z.array(id),
  bus: z.exactOptional(id),
  count: z.exactOptional(z.int()),
  wideMm: z.exactOptional(z.number().meta({ unit: 'mm' })),
  closed: z.exactOptional(z.boolean()),
  now: z.exactOptional(money),
  later: z.exactOptional(money),
});
export type Provide = z.infer<typeof provideSchema>;

/**
 * How the phases of a refit stand, each planned as a whole boat. The orders of the phases added up less `atOnce`, the order of
 * the work done at once, is what phasing costs; `more` are the items of the difference, a count under nought where fewer are
 * bought.
 */
export const phasesSchema = z.strictObject({
  phases: z.array(phaseEntrySchema),
  atOnce: orderSumSchema,
  costs: z.strictObject({ ...orderSumSchema.shape, more: z.array(phaseItemSchema), cures: z.array(phaseCureSchema) }),
  /** units that come and that no reading passes in the end: bought for the time between */
  between: z.array(id),
  /** terminators that stand elsewhere from a phase on */
  moved: z.array(z.strictObject({ bus: id, phase, from: id, to: id })),
  provide: z.array(provideSchema),
});
export type PhasesPart = z.infer<typeof phasesSchema>;
