import * as z from 'zod';
import { idSchema } from './ids.ts';

const voltsSchema = z.number().positive().max(1000).meta({ unit: 'V' });
const ampsSchema = z.number().positive().max(1000).meta({ unit: 'A' });
const kilogramsSchema = z.number().positive().max(10_000_000).meta({ unit: 'kg' });

/** How a rudder sensor tells the angle: by its resistance, by a frequency, or by messages on the bus. */
export const rudderKindSchema = z.enum(['potentiometer', 'frequency', 'bus']);
export type RudderKind = z.infer<typeof rudderKindSchema>;

/** What happens to clutch or bypass without current or without word: the helm is free by itself, or it is not. */
const withoutSchema = z.enum(['lets-go', 'holds']);

/** What turns the rudder: its motor, or the valves of a pump that runs all the time. */
export const driveSchema = z.strictObject({
  type: z.enum(['reversing-pump', 'constant-pump', 'linear', 'wheel', 'tiller', 'stern-drive']),
  /** of the motor; of a pump that runs all the time, of one of its valves */
  motorV: voltsSchema,
  runA: ampsSchema,
  peakA: ampsSchema,
  clutchV: z.exactOptional(voltsSchema),
  clutchA: z.exactOptional(ampsSchema),
  /** has a bypass valve that the clutch output works */
  bypass: z.exactOptional(z.boolean()),
  whenPowerIsLost: z.exactOptional(withoutSchema),
  needsRudderSensor: z.exactOptional(z.boolean()),
  /** the heaviest boat its maker gives it for, laden */
  boatKg: z.exactOptional(kilogramsSchema),
});
export type Drive = z.infer<typeof driveSchema>;

/** What a pilot computer can work at its drive output. */
export const driveOutputSchema = z.strictObject({
  port: idSchema,
  works: z.array(z.enum(['reversing-motor', 'solenoid-valves'])).min(1),
  /** volts it can be set to; absent where it gives those of its supply */
  motorV: z.exactOptional(z.array(voltsSchema).min(1)),
  runA: ampsSchema,
  peakA: z.exactOptional(ampsSchema),
  /** of one valve; absent where it is that of a motor */
  valveA: z.exactOptional(ampsSchema),
  /** the output for clutch or bypass; without volts it gives those of its supply */
  clutch: z.exactOptional(
    z.strictObject({
      fitted: z.boolean(),
      clutchV: z.exactOptional(z.array(voltsSchema).min(1)),
      clutchA: z.exactOptional(ampsSchema),
    }),
  ),
  rudder: z.exactOptional(z.strictObject({ hears: z.array(rudderKindSchema), needed: z.boolean() })),
  whenBusIsLost: z.exactOptional(withoutSchema),
});
export type DriveOutput = z.infer<typeof driveOutputSchema>;
