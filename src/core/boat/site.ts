import * as z from 'zod';

/** What is known of the spot a sensor sits in, and of how it sits; what is left out is not known. */
export const kitSiteSchema = z
  .strictObject({
    /** how far the face of a transducer, or the top of a heading sensor, leans from level */
    tiltDeg: z.exactOptional(z.number().min(0).max(90).meta({ unit: '°' })),
    /** what takes up the lean of a hull: a block under the housing, or an element that leans inside it */
    tiltBy: z.exactOptional(z.enum(['fairing-block', 'tilted-element'])),
    /** room over the housing to pull the insert */
    headroomMm: z.exactOptional(z.number().min(0).max(5000).meta({ unit: 'mm' })),
    /** what the hull is of where it sits; a ring is solid fill round the hole of a cored one */
    laminate: z.exactOptional(z.enum(['solid', 'core', 'core-with-ring'])),
    /** whether it goes into the housing of the one before it */
    housing: z.exactOptional(z.enum(['old', 'new'])),
    /** between a heading sensor and the nearest plating of steel */
    offSteelM: z.exactOptional(z.number().min(0).max(60).meta({ unit: 'm' })),
    /** in a locker or box of steel */
    steelLocker: z.exactOptional(z.boolean()),
    /** a compass adjuster makes up for the iron round it */
    adjuster: z.exactOptional(z.boolean()),
    /** its arrow points to the bow along the keel */
    arrowForward: z.exactOptional(z.boolean()),
    /** of a compass: swung anew after the work, or meant to be */
    swing: z.exactOptional(z.enum(['planned', 'done'])),
  })
  .meta({ id: 'KitSite' });
export type KitSite = z.infer<typeof kitSiteSchema>;

const alongSchema = z.number().min(-10).max(70).meta({ unit: 'm' });

/** What is under the water of a hull and what sensors there must keep clear of, forward of the transom. */
export const underwaterSchema = z.strictObject({
  waterlineM: z.exactOptional(z.number().min(1).max(60).meta({ unit: 'm' })),
  /** the foremost propeller */
  propellerXM: z.exactOptional(alongSchema),
  /** where the keel stands out of the hull, on the centreline */
  keel: z.exactOptional(z.strictObject({ fromXM: alongSchema, toXM: alongSchema })),
});
