import * as z from 'zod';

// The part of a plan that tells how a sensor of depth, speed or wind sits, and whether what takes it can read it.
const id = z.string();

/** What is looked at where a sensor sits. */
export const sensorChecks = [
  'ahead-of-propeller',
  'from-keel',
  'ahead-of-keel',
  'off-centreline',
  'headroom',
  'tilt',
  'laminate',
  'housing',
  'material',
  'clear-air',
] as const;

/** One thing looked at: `measured` against `limit` where both are figures; `ask` where nobody has said. */
export const sensorCheckSchema = z.strictObject({
  check: z.enum(sensorChecks),
  verdict: z.enum(['ok', 'bad', 'ask']),
  measured: z.exactOptional(z.number().meta({ unit: 'that of the check' })),
  limit: z.exactOptional(z.number().meta({ unit: 'that of the check' })),
  unit: z.exactOptional(z.enum(['m', 'mm', '°'])),
  /** what is in the way */
  by: z.exactOptional(id),
});
export type SensorCheck = z.infer<typeof sensorCheckSchema>;

export const misfitKinds = ['frequency', 'power', 'feed', 'pulses', 'vane'] as const;

/** A bare sensor at an input: what does not fit, and what one of the two sheets leaves open. */
export const sensorInputSchema = z.strictObject({
  /** the port of the sensor, `kit.port` */
  port: id,
  /** the input, `kit.port` */
  at: id,
  misfits: z.array(z.strictObject({ what: z.enum(misfitKinds), gives: z.string(), takes: z.string() })),
  unknown: z.array(z.enum(misfitKinds)),
});
export type SensorInput = z.infer<typeof sensorInputSchema>;

/** How one sensor sits and what takes it. */
export const sensorSiteSchema = z.strictObject({
  checks: z.array(sensorCheckSchema),
  inputs: z.array(sensorInputSchema),
});
export type SensorSite = z.infer<typeof sensorSiteSchema>;
