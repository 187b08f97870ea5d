import * as z from 'zod';
import { typedIds } from '../facts/typed-settings.ts';
import { atMostOnce } from './at-most-once.ts';
import { daySchema } from './day.ts';
import { idSchema } from './ids.ts';
import { measureSchema } from './measure.ts';

const metresSchema = z.number().min(0).max(50).meta({ unit: 'm' });
const nameSchema = z.string().min(1).max(120);

/** One part of the air draft. Those without a unit stand one on the other; of those that are units the highest counts. */
export const airDraftPartSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  length: measureSchema,
  /** the unit it is: aboard as long as that */
  unit: z.exactOptional(idSchema),
});
export type AirDraftPart = z.infer<typeof airDraftPartSchema>;

/** How deep a transducer lies below the water. */
export const transducerDepthSchema = z.strictObject({ unit: idSchema, below: measureSchema });
export type TransducerDepth = z.infer<typeof transducerDepthSchema>;

/** In what one screen shows things; absent what nobody looked at. */
export const screenUnitsSchema = z.strictObject({
  unit: idSchema,
  depth: z.exactOptional(z.enum(['m', 'ft', 'fm'])),
  height: z.exactOptional(z.enum(['m', 'ft'])),
  speed: z.exactOptional(z.enum(['kn', 'mph', 'km/h'])),
  wind: z.exactOptional(z.enum(['kn', 'm/s', 'mph', 'km/h'])),
  temperature: z.exactOptional(z.enum(['°C', '°F'])),
});
export type ScreenUnits = z.infer<typeof screenUnitsSchema>;

/** What was read off a unit as it stands there: figures in the unit it is typed in. */
export const typedInSchema = z.strictObject({
  unit: idSchema,
  what: z.enum(typedIds).exclude(['ais-name', 'ais-call-sign', 'ship-number', 'screen-units']),
  figure: z.number().min(-10_000).max(10_000).meta({ unit: 'that of `in`' }),
  in: z.enum(['m', 'ft', 'fm', 'factor', '°']),
  on: z.exactOptional(daySchema),
});
export type TypedIn = z.infer<typeof typedInSchema>;

/** The boat’s own measures that settings are computed from, and what stands in her units. */
export const measuresSchema = z.strictObject({
  airDraftParts: z.exactOptional(
    z
      .array(airDraftPartSchema)
      .refine(...atMostOnce<AirDraftPart>(({ id }) => id, 'A part of the air draft stands once.')),
  ),
  transducers: z.exactOptional(
    z
      .array(transducerDepthSchema)
      .refine(...atMostOnce<TransducerDepth>(({ unit }) => unit, 'A transducer stands once.')),
  ),
  /** waves and squat, and what is not known for sure: both are added to the draft */
  wavesM: z.exactOptional(metresSchema),
  doubtM: z.exactOptional(metresSchema),
  /** what is to stay free above the mast under a bridge */
  overheadM: z.exactOptional(metresSchema),
  screens: z.exactOptional(
    z.array(screenUnitsSchema).refine(...atMostOnce<ScreenUnits>(({ unit }) => unit, 'A screen stands once.')),
  ),
  typed: z.exactOptional(
    z
      .array(typedInSchema)
      .refine(...atMostOnce<TypedIn>(({ unit, what }) => `${unit} ${what}`, 'What stands in a unit is said once.')),
  ),
});
export type Measures = z.infer<typeof measuresSchema>;
