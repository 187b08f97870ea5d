import * as z from 'zod';
import { fuseFamilyIds } from '../facts/fuses.ts';
import { dottedIdSchema, idSchema } from './ids.ts';
import { measureSchema } from './measure.ts';

const voltsSchema = z.number().positive().max(1000).meta({ unit: 'V' });
const ampsSchema = z.number().positive().max(10_000).meta({ unit: 'A' });

const protectionSchema = z.strictObject({
  /** `none` where there is no fuse nor breaker, which is not the same as not known */
  kind: z.enum(['fuse', 'breaker', 'none']),
  family: z.exactOptional(z.enum(fuseFamilyIds)),
  /** along the wire from the battery, or from what feeds the panel */
  distance: z.exactOptional(measureSchema),
  /** the wire to it is in a sheath or conduit all the way */
  sheathed: z.exactOptional(z.boolean()),
  /** fault current it is printed to break */
  interruptA: z.exactOptional(z.number().positive().max(200_000).meta({ unit: 'A' })),
});
export type Protection = z.infer<typeof protectionSchema>;

export const bankSchema = z.strictObject({
  id: idSchema,
  place: idSchema,
  chemistry: z.enum(['flooded', 'agm', 'gel', 'lifepo4', 'other']),
  nominalV: voltsSchema,
  capacityAh: z.number().positive().max(100_000).meta({ unit: 'Ah' }),
  lowestV: z.exactOptional(voltsSchema),
  /** of the whole bank; with it `lowestV` is at rest, without it at the poles while everything draws */
  internalMilliOhm: z.exactOptional(z.number().positive().max(10_000).meta({ unit: 'mΩ' })),
  for: z.enum(['house', 'start', 'both']),
  /** cold-cranking amperes of the whole bank: parallel strings added, batteries in series not */
  coldCrankingA: z.exactOptional(z.number().positive().max(100_000).meta({ unit: 'A' })),
  /** short-circuit current its maker states, of the whole bank */
  shortCircuitA: z.exactOptional(z.number().positive().max(200_000).meta({ unit: 'A' })),
  main: z.exactOptional(protectionSchema.extend({ ratingA: z.exactOptional(ampsSchema) })),
  /** a switch takes it off everything but what must stay live */
  isolator: z.exactOptional(z.boolean()),
  /** of a starting bank: what keeps the house from drawing on it */
  partedBy: z.exactOptional(z.enum(['switch', 'relay', 'diode', 'dcdc', 'apart', 'nothing'])),
  /** its kind and figures were read from its label */
  seen: z.exactOptional(z.boolean()),
});
export type Bank = z.infer<typeof bankSchema>;

export const circuitSchema = z.strictObject({
  id: idSchema,
  name: z.exactOptional(z.string().min(1).max(120)),
  ratingA: ampsSchema,
  kind: z.enum(['breaker', 'slow-breaker', 'fuse', 'live-fuse']),
  feeds: z.array(z.union([dottedIdSchema, idSchema])),
  interruptA: z.exactOptional(z.number().positive().max(200_000).meta({ unit: 'A' })),
  /** each unit on it has a fuse of its own in its lead */
  fusedEach: z.exactOptional(z.boolean()),
  /** plus and minus side by side all the way, or the minus another way */
  laid: z.exactOptional(z.enum(['pair', 'single'])),
});
export type Circuit = z.infer<typeof circuitSchema>;

export const panelSchema = z.strictObject({
  id: idSchema,
  place: idSchema,
  from: idSchema,
  feeder: z.exactOptional(
    z.strictObject({
      length: measureSchema,
      areaMm2: z.exactOptional(z.number().positive().max(1000).meta({ unit: 'mm²' })),
    }),
  ),
  mainA: z.exactOptional(ampsSchema),
  main: z.exactOptional(protectionSchema),
  /** volts of a tap between the batteries of its bank, where it is fed from there and not from the whole bank */
  tapV: z.exactOptional(voltsSchema),
  /** places with no breaker or fuse in them yet */
  freeWays: z.exactOptional(z.int().min(0).max(200).meta({ unit: 'places' })),
  circuits: z.array(circuitSchema),
});
export type Panel = z.infer<typeof panelSchema>;

const dcdcSchema = z.strictObject({
  id: idSchema,
  place: idSchema,
  outV: voltsSchema,
  ratedA: ampsSchema,
  efficiencyPct: z.number().positive().max(100).meta({ unit: '%' }),
  isolated: z.boolean(),
});
export type Dcdc = z.infer<typeof dcdcSchema>;

const chargerSchema = z.strictObject({
  id: idSchema,
  place: idSchema,
  kind: z.enum(['alternator', 'mains', 'solar', 'wind', 'dcdc']),
  charges: z.array(idSchema).min(1),
  ratedA: z.exactOptional(ampsSchema),
  /** the unit or DC converter of this file that it is */
  is: z.exactOptional(idSchema),
});
export type Charger = z.infer<typeof chargerSchema>;

/** Where the power comes from: banks, panels with their circuits, DC converters. */
export const supplySchema = z.strictObject({
  banks: z.array(bankSchema),
  panels: z.array(panelSchema),
  dcdc: z.array(dcdcSchema),
  chargers: z.exactOptional(z.array(chargerSchema)),
  /** the place of the one point where all negatives meet */
  negativeAt: z.exactOptional(idSchema),
});
export type Supply = z.infer<typeof supplySchema>;
