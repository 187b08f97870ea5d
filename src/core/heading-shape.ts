import * as z from 'zod';
import { compassFeedSchema } from './compass-shape.ts';

// The part of a plan that tells how well a heading sensor stands.
const metres = z.number().meta({ unit: 'm' });
const degrees = z.number().meta({ unit: '°' });

/** What is near a heading sensor, by how it turns one; `unit` where only its own distance from a compass is known. */
export const headingNeighbourIds = [
  'engine',
  'radar',
  'motor',
  'radio-antenna',
  'high-current',
  'loudspeaker',
  'compass',
  'radio',
  'steel',
  'unit',
] as const;

export const headingVerdicts = ['good', 'doubtful', 'not'] as const;

/** One thing near a heading sensor, and how far it must keep. */
export const headingNearSchema = z.strictObject({
  /** a unit, a bank, a line, or a place of the engine space */
  id: z.string(),
  is: z.enum(headingNeighbourIds),
  distanceM: metres,
  leastM: metres,
  /** by its kind, by its own sheet, or taken for an unknown thing */
  by: z.enum(['kind', 'sheet', 'taken']),
  verdict: z.enum(headingVerdicts),
});
export type HeadingNear = z.infer<typeof headingNearSchema>;

/** How a heading sensor stands: `near` holds what is too near or nearly so, else the one thing that limits it. */
export const headingSiteSchema = z.strictObject({
  north: z.enum(['fluxgate', 'nine-axis', 'gyro', 'satellite', 'unknown']),
  /** whether iron and currents turn it; taken so where nobody has said how it finds north */
  magnetic: z.boolean(),
  verdict: z.enum(headingVerdicts),
  near: z.array(headingNearSchema),
  /** feeds that turn it noticeably, by line */
  feeds: z.array(compassFeedSchema),
  /** all feeds together, should they lie so that their fields add up */
  sumDeg: degrees,
  /** what a steering compass may be turned by a single thing */
  allowedDeg: degrees,
});
export type HeadingSite = z.infer<typeof headingSiteSchema>;
