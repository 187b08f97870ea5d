import * as z from 'zod';

// The part of a plan that tells of pilots: each computer against its drive, and who can get the helm back where.
const id = z.string();

export const driveChecks = [
  'motor-volts',
  'output-kind',
  'run-current',
  'peak-current',
  'clutch-output',
  'clutch-volts',
  'clutch-current',
  'rudder-kind',
  'rudder-sensor',
  'boat-weight',
  'power-lost',
  'bus-lost',
  'leads-run',
  'leads-peak',
] as const;
export type DriveCheckId = (typeof driveChecks)[number];

const verdictSchema = z.enum(['fits', 'fails', 'unknown']);
export type DriveVerdict = z.infer<typeof verdictSchema>;

/** One thing a drive asks and its computer, its cables or the boat give; figures in `unit`, kinds in words. */
const driveCheckSchema = z.strictObject({
  check: z.enum(driveChecks),
  verdict: verdictSchema,
  asked: z.exactOptional(z.number()),
  given: z.exactOptional(z.number()),
  unit: z.exactOptional(z.enum(['V', 'A', 'kg', '%'])),
  askedKind: z.exactOptional(z.string()),
  givenKinds: z.exactOptional(z.array(z.string())),
});
export type DriveCheck = z.infer<typeof driveCheckSchema>;

/** The output that would do it: `peakA` the first of the usual ones, absent where none of them gives as much. */
const outputWantedSchema = z.strictObject({
  works: z.enum(['reversing-motor', 'solenoid-valves']),
  motorV: z.number().meta({ unit: 'V' }),
  peakA: z.exactOptional(z.number().meta({ unit: 'A' })),
  clutch: z.boolean(),
  clutchV: z.exactOptional(z.number().meta({ unit: 'V' })),
  clutchA: z.exactOptional(z.number().meta({ unit: 'A' })),
});
export type OutputWanted = z.infer<typeof outputWantedSchema>;

/** A pilot computer and its drive; a pilot that is one unit with its drive has no `computer` and no `join`. */
export const driveEntrySchema = z.strictObject({
  drive: id,
  computer: z.exactOptional(id),
  join: z.exactOptional(id),
  checks: z.array(driveCheckSchema),
  verdict: verdictSchema,
  /** where the output of this computer does not do it */
  instead: z.exactOptional(outputWantedSchema),
});
export type DriveEntry = z.infer<typeof driveEntrySchema>;

/** One way to make a pilot let go: whether it counts, and if not, why. */
const letGoEntrySchema = z.strictObject({
  how: z.enum(['hard-wired-switch', 'lever', 'breaker', 'pilot-head', 'remote']),
  at: id,
  awayM: z.number().meta({ unit: 'm' }),
  counts: z.boolean(),
  whyNot: z.exactOptional(
    z.enum(['needs-the-network', 'out-of-reach', 'behind-a-panel', 'feeds-no-pilot', 'holds-without-power']),
  ),
});
export type LetGoEntry = z.infer<typeof letGoEntrySchema>;

/** A place the boat is steered from, with what frees the helm there. */
export const steeringEntrySchema = z.strictObject({
  place: id,
  by: z.enum(['wheel', 'tiller', 'joystick', 'emergency-tiller']),
  ways: z.array(letGoEntrySchema),
  free: z.boolean(),
});
export type SteeringEntry = z.infer<typeof steeringEntrySchema>;

/** What a plan says of pilots and steering places. */
export const drivesEntriesSchema = { drives: z.array(driveEntrySchema), steering: z.array(steeringEntrySchema) };
