import * as z from 'zod';
import { aerialSchema, coaxRunSchema, spacingSchema } from './aerial-shape.ts';
import { headingSiteSchema } from './heading-shape.ts';
import { radarSchema, scannerPairSchema } from './radar-shape.ts';
import { sensorSiteSchema } from './sensor-shape.ts';

// The part of a plan that tells of every unit whose place decides how well it works.
const id = z.string();
const metres = z.number().meta({ unit: 'm' });

/** What a unit is for that must stand in the right place. */
export const siteKinds = ['radio-antenna', 'position-antenna', 'radar', 'heading', 'depth', 'speed', 'wind'] as const;

/** One unit that must stand in the right place to work: an antenna, a radar, a heading sensor, what feels water or wind. */
export const siteEntrySchema = z.strictObject({
  unit: id,
  is: z.enum(siteKinds),
  place: id,
  /** over the water; below nothing under it */
  aboveWaterM: metres,
  /** of a heading sensor: what is near, and whether it may stand so */
  heading: z.exactOptional(headingSiteSchema),
  /** of a sensor of depth, speed or wind: how it sits, and what takes it */
  sensor: z.exactOptional(sensorSiteSchema),
  /** of an antenna */
  aerial: z.exactOptional(aerialSchema),
  radar: z.exactOptional(radarSchema),
});
export type SiteEntry = z.infer<typeof siteEntrySchema>;

/** What a plan says of fitting. */
export const fittingEntriesSchema = {
  sites: z.array(siteEntrySchema),
  coax: z.array(coaxRunSchema),
  spacings: z.array(spacingSchema),
  scanners: z.array(scannerPairSchema),
};
