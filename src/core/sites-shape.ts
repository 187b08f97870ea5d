import * as z from 'zod';

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
});
export type SiteEntry = z.infer<typeof siteEntrySchema>;

/** What a plan says of fitting. */
export const fittingEntriesSchema = { sites: z.array(siteEntrySchema) };
