import * as z from 'zod';

// The part of a plan that tells what stands and runs near each magnetic compass.
const id = z.string();
const metres = z.number().meta({ unit: 'm' });
const degrees = z.number().meta({ unit: '°' });
const microtesla = z.number().meta({ unit: 'µT' });

/** One feed within 5 m of a compass: the field of its current there, the deviation that makes, and how far off it must lie. */
export const compassFeedSchema = z.strictObject({
  line: id,
  /** `kit.port`, a bus or a converter */
  to: id,
  currentA: z.number().meta({ unit: 'A' }),
  /** from the compass to the nearest of its route, straight from place to place */
  distanceM: metres,
  /** out and back side by side, or the return another way */
  laid: z.enum(['pair', 'single']),
  /** what says so: the circuit in the boat file, the cable aboard, or the two-core cable the plan buys */
  laidBy: z.enum(['file', 'cable', 'plan']),
  fieldUt: microtesla,
  deviationDeg: degrees,
  keepM: metres,
  tooNear: z.boolean(),
});
export type CompassFeed = z.infer<typeof compassFeedSchema>;

/** One unit near a compass. `safeM` is from its sheet, else what is usual for its kind, else the distance taken for an unknown thing. */
export const compassUnitSchema = z.strictObject({
  unit: id,
  distanceM: metres,
  safeM: metres,
  safeBy: z.enum(['sheet', 'kind', 'taken']),
  tooNear: z.boolean(),
});
export type CompassUnit = z.infer<typeof compassUnitSchema>;

/** One magnetic compass that is steered by, with the Earth's horizontal field, what may turn it, and all that is near. */
export const compassEntrySchema = z.strictObject({
  compass: id,
  horizontalUt: microtesla,
  allowedUt: microtesla,
  allowedDeg: degrees,
  feeds: z.array(compassFeedSchema),
  /** all feeds together, should they lie so that their fields add up */
  sumUt: microtesla,
  sumDeg: degrees,
  units: z.array(compassUnitSchema),
});
export type CompassEntry = z.infer<typeof compassEntrySchema>;
