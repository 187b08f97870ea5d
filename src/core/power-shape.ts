import * as z from 'zod';

// The part of a plan that tells of direct current: what every unit draws, its feed with wire and fuse, the volts that reach it.
const id = z.string();
const volts = z.number().meta({ unit: 'V' });
const amps = z.number().meta({ unit: 'A' });
const metres = z.number().meta({ unit: 'm' });
const percent = z.number().meta({ unit: '%' });

/** What feeds a port: a circuit, a bus, a network cable, another unit; nothing where the boat file does not say. */
export const loadSourceSchema = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('circuit'), panel: id, circuit: id }),
  z.strictObject({ by: z.literal('bus'), bus: id }),
  z.strictObject({ by: z.literal('network'), port: z.exactOptional(id) }),
  z.strictObject({ by: z.literal('unit'), port: id }),
  z.strictObject({ by: z.literal('nothing') }),
]);
export type LoadSource = z.infer<typeof loadSourceSchema>;

/** What one port draws in the last phase. Amperes at the lowest volts of its supply, at which a unit of constant power draws most. */
export const loadEntrySchema = z.strictObject({
  /** `kit.port` */
  port: id,
  source: loadSourceSchema,
  /** the bank or converter it hangs on in the end; absent where nothing feeds it */
  from: z.exactOptional(id),
  nominalV: volts,
  behaves: z.enum(['current', 'power']),
  typicalA: amps,
  mostA: amps,
  /** for moments: sending, starting, a motor against its stop */
  peakA: z.exactOptional(amps),
  minV: volts,
  maxV: volts,
  /** the fuse its maker asks for */
  fuseA: z.exactOptional(amps),
});
export type LoadEntry = z.infer<typeof loadEntrySchema>;

/** What one port drew before the refit, by the same reckoning, so that old can be held against new. */
export const oldLoadSchema = loadEntrySchema.pick({
  port: true,
  from: true,
  typicalA: true,
  mostA: true,
  peakA: true,
});
export type OldLoad = z.infer<typeof oldLoadSchema>;

/** What a bank or converter gives when everything on it draws, before the refit (phase 0) and in each phase. */
export const loadSumSchema = z.strictObject({ phase: z.int(), from: id, typicalA: amps, mostA: amps });
export type LoadSum = z.infer<typeof loadSumSchema>;

/** The lead from a pilot computer to its drive: what flows, its wire, and what feed and lead lose together. */
const driveLeadSchema = z.strictObject({
  line: id,
  /** port of the drive */
  to: id,
  runA: amps,
  peakA: amps,
  lengthM: metres,
  wire: z.exactOptional(z.enum(['picked', 'aboard', 'settled'])),
  areaMm2: z.exactOptional(z.number().meta({ unit: 'mm²' })),
  awg: z.exactOptional(z.string()),
  /** lost in the lead itself as the drive runs, and in feed and lead together, as it runs and at its peak */
  realDropV: z.exactOptional(volts),
  togetherV: z.exactOptional(volts),
  togetherPct: z.exactOptional(percent),
  peakPct: z.exactOptional(percent),
});
export type DriveLeadEntry = z.infer<typeof driveLeadSchema>;

/**
 * One feed: a cable from a panel to a unit, a bus or a converter. `loadA` at the lowest supply; `lengthM` one way at its
 * longest; wire figures are absent where the cable is aboard and nobody has said how thick it is.
 */
export const feedEntrySchema = z.strictObject({
  line: id,
  /** `kit.port`, a bus or a converter */
  to: id,
  panel: id,
  circuit: id,
  nominalV: volts,
  typicalA: amps,
  loadA: amps,
  peakA: z.exactOptional(amps),
  lengthM: metres,
  /** that may be lost, and what asks for it: the share of the rules, or the least volts of the unit */
  allowedV: volts,
  allowedBy: z.enum(['percent', 'unit']),
  wire: z.exactOptional(z.enum(['picked', 'aboard', 'settled', 'bus-cable'])),
  areaMm2: z.exactOptional(z.number().meta({ unit: 'mm²' })),
  awg: z.exactOptional(z.string()),
  /** what each of the three reasons asks for alone, in mm² */
  asked: z.exactOptional(
    z.strictObject({ drop: z.string(), ampacity: z.string(), least: z.exactOptional(z.string()) }),
  ),
  decidedBy: z.exactOptional(z.enum(['drop', 'ampacity', 'least-size'])),
  /** by the published rule, then in the cable itself where it works */
  dropV: z.exactOptional(volts),
  dropPct: z.exactOptional(percent),
  realDropV: z.exactOptional(volts),
  realDropPct: z.exactOptional(percent),
  ampacityA: z.exactOptional(amps),
  engineSpace: z.boolean(),
  /** conductors in the fullest bundle on its way that carry current together */
  carrying: z.int(),
  circuitA: amps,
  /** what protects its wire: the circuit, or a fuse of its own beside the panel */
  fuseA: z.exactOptional(amps),
  fuseBy: z.exactOptional(z.enum(['circuit', 'in-line'])),
  fuseSlow: z.exactOptional(z.boolean()),
  /** volts at its far end with the bank at its lowest and everything drawing; lost on the whole way from the source */
  atEndV: z.exactOptional(volts),
  lostPct: z.exactOptional(percent),
  leastV: z.exactOptional(volts),
  /** leads to drives behind it, which lose from the same share */
  leads: z.exactOptional(z.array(driveLeadSchema)),
  /** why no wire or no fuse does it */
  whyNot: z.exactOptional(z.enum(['drop', 'ampacity', 'insulation', 'no-rating', 'maker', 'conductor'])),
});
export type FeedEntry = z.infer<typeof feedEntrySchema>;

/** The direct current behind one bank or converter, solved with everything drawing its most. `worst`: where it fails first. */
export const supplyEntrySchema = z.strictObject({
  source: id,
  /** volts it gives at its lowest */
  sourceV: volts,
  works: z.boolean(),
  worst: z.exactOptional(id),
  sourceA: z.exactOptional(amps),
  /** volts at panels, converters and ports */
  at: z.array(z.strictObject({ node: id, volts })),
});
export type SupplyEntry = z.infer<typeof supplyEntrySchema>;

/** What a plan says of direct current. */
export const powerEntriesSchema = {
  loads: z.array(loadEntrySchema),
  loadsBefore: z.array(oldLoadSchema),
  loadSums: z.array(loadSumSchema),
  feeds: z.array(feedEntrySchema),
  supplies: z.array(supplyEntrySchema),
};
