import * as z from 'zod';
import { dottedIdSchema, idSchema } from './ids.ts';
import { measureSchema } from './measure.ts';

const voltsSchema = z.number().positive().max(1000).meta({ unit: 'V' });
const ampsSchema = z.number().positive().max(10_000).meta({ unit: 'A' });

const bankSchema = z.strictObject({
  id: idSchema,
  place: idSchema,
  chemistry: z.enum(['flooded', 'agm', 'gel', 'lifepo4', 'other']),
  nominalV: voltsSchema,
  capacityAh: z.number().positive().max(100_000).meta({ unit: 'Ah' }),
  lowestV: z.exactOptional(voltsSchema),
  for: z.enum(['house', 'start', 'both']),
});
export type Bank = z.infer<typeof bankSchema>;

const circuitSchema = z.strictObject({
  id: idSchema,
  name: z.exactOptional(z.string().min(1).max(120)),
  ratingA: ampsSchema,
  kind: z.enum(['breaker', 'slow-breaker', 'fuse', 'live-fuse']),
  feeds: z.array(z.union([dottedIdSchema, idSchema])),
});
export type Circuit = z.infer<typeof circuitSchema>;

const panelSchema = z.strictObject({
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

/** Where the power comes from: banks, panels with their circuits, DC converters. */
export const supplySchema = z.strictObject({
  banks: z.array(bankSchema),
  panels: z.array(panelSchema),
  dcdc: z.array(dcdcSchema),
});
export type Supply = z.infer<typeof supplySchema>;
