import * as z from 'zod';
import { bridgeDatums } from '../facts/bridge-datums.ts';
import { atMostOnce } from './at-most-once.ts';
import { daySchema } from './day.ts';
import { idSchema } from './ids.ts';

const nameSchema = z.string().min(1).max(120);
const knots = z.number().positive().max(100).meta({ unit: 'kn' });
const metres = z.number().min(0).max(500).meta({ unit: 'm' });
const degrees = z.number().min(0).max(360).meta({ unit: '°' });
const ofDay = { id: idSchema, on: daySchema, by: z.exactOptional(nameSchema) };
const ofUnit = { ...ofDay, unit: idSchema };

/** A log run to and fro over a known distance. */
export const logTrialSchema = z.strictObject({
  ...ofUnit,
  distanceNm: z.number().positive().max(20).meta({ unit: 'nm' }),
  /** in the order they were run */
  runs: z
    .array(z.strictObject({ seconds: z.number().positive().max(100_000).meta({ unit: 's' }), indicatedKn: knots }))
    .min(2)
    .max(8),
  /** that stood in it while it was run */
  factorBefore: z.number().positive().max(20).meta({ unit: 'factor' }),
});

/** Wind angles on both tacks, same trim. */
export const windTrialSchema = z.strictObject({
  ...ofUnit,
  tacks: z
    .array(z.strictObject({ onPortDeg: degrees, onStarboardDeg: degrees }))
    .min(1)
    .max(12),
});

/** A lead line beside a transducer. */
export const leadTrialSchema = z.strictObject({
  ...ofUnit,
  leadM: metres,
  shownM: metres,
  /** that stood in the sensor then, with its sign */
  offsetM: z.number().min(-50).max(50).meta({ unit: 'm' }),
});

/** A swing of one compass. */
export const swingSchema = z.strictObject({
  ...ofUnit,
  /** whether everything electric was off, or all of it on */
  electronics: z.enum(['off', 'on']),
  points: z
    .array(z.strictObject({ magneticDeg: degrees, compassDeg: degrees }))
    .min(1)
    .max(72),
});

/** A bridge she is to pass. */
export const bridgeSchema = z.strictObject({
  ...ofDay,
  name: nameSchema,
  /** over the level its chart counts from */
  chartedM: metres,
  /** that level, as the chart names it; without it nothing is computed */
  datum: z.exactOptional(z.enum(bridgeDatums)),
  /** how high it lies over the level the tide is counted from */
  datumAboveM: z.exactOptional(z.number().min(-50).max(50).meta({ unit: 'm' })),
});

const once = atMostOnce<{ readonly id: string }>(({ id }) => id, 'An id names one trial.');

/** What was measured at sea with the calculators, by kind; each has an id of its own. */
export const atSeaSchema = z.strictObject({
  logs: z.exactOptional(z.array(logTrialSchema).refine(...once)),
  winds: z.exactOptional(z.array(windTrialSchema).refine(...once)),
  leads: z.exactOptional(z.array(leadTrialSchema).refine(...once)),
  swings: z.exactOptional(z.array(swingSchema).refine(...once)),
  bridges: z.exactOptional(z.array(bridgeSchema).refine(...once)),
});
export type AtSea = z.infer<typeof atSeaSchema>;
