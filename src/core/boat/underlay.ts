import * as z from 'zod';
import { pictureSchema } from './picture.ts';

const metresSchema = z.number().min(-500).max(500).meta({ unit: 'm' });
const pixelSchema = z.number().min(-10_000).max(20_000).meta({ unit: 'pixels' });

/**
 * A point of a picture, in pixels from its upper left, and where that is aboard: metres forward of the transom, and across
 * that metres above the waterline as seen from the side, metres to starboard as seen from above.
 */
const fixSchema = z.strictObject({
  xPx: pixelSchema,
  yPx: pixelSchema,
  alongM: metresSchema,
  acrossM: metresSchema,
});
export type Fix = z.infer<typeof fixSchema>;

export const underlayViews = ['side', 'top'] as const;

/** A photo or scan under one view of the boat, laid out by two of its points; `mirrored` where its bow is to the left. */
export const underlaySchema = z
  .strictObject({
    view: z.enum(underlayViews),
    picture: pictureSchema,
    /** the first of the two points takes the picture along, the other turns and scales it about the first */
    from: fixSchema,
    to: fixSchema,
    mirrored: z.exactOptional(z.boolean()),
    /** kept, but not shown */
    hidden: z.exactOptional(z.boolean()),
  })
  .refine(({ from, to }) => Math.hypot(from.xPx - to.xPx, from.yPx - to.yPx) >= 1, {
    message: 'The two points of the picture are one; a scale takes two.',
    path: ['to'],
  })
  .refine(({ from, to }) => Math.hypot(from.alongM - to.alongM, from.acrossM - to.acrossM) >= 0.01, {
    message: 'The two points of the picture are at one place aboard; a scale takes two.',
    path: ['to'],
  });
export type Underlay = z.infer<typeof underlaySchema>;
export type Fixes = Pick<Underlay, 'from' | 'to'>;
export type UnderlayView = Underlay['view'];

/** Pictures under the drawing, at most one a view. */
export const underlaysSchema = z
  .array(underlaySchema)
  .refine((underlays) => new Set(underlays.map(({ view }) => view)).size === underlays.length, {
    message: 'A view has one picture under it.',
  });
