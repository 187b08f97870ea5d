import * as z from 'zod';
import { idSchema } from './ids.ts';
import { howSchema } from './measure.ts';
import { pictureSchema } from './picture.ts';

const sizeMm = z.number().positive().max(5000).meta({ unit: 'mm' });
const spaceMm = z.number().min(0).max(5000).meta({ unit: 'mm' });
const offsetMm = z.number().min(-5000).max(5000).meta({ unit: 'mm' });
const pointSchema = z.tuple([offsetMm, offsetMm]);
const pixelSchema = z.number().min(-10_000).max(20_000).meta({ unit: 'pixels' });
const metresSchema = z.number().min(0).max(20).meta({ unit: 'm' });
const shortText = z.string().min(1).max(200);

/** How far the middle of a traced outline may lie from the middle of the hole, and its extents from the hole’s sides. */
const tracedWithinMm = 0.5;

interface HoleSizes {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly cornerMm?: number;
  readonly outlineMm?: readonly (readonly [number, number])[];
}

const extentOf = (values: readonly number[]): readonly [number, number] => [Math.min(...values), Math.max(...values)];

const isCentred = ([least, most]: readonly [number, number], sizeMm: number): boolean =>
  Math.abs(most - sizeMm / 2) <= tracedWithinMm && Math.abs(least + sizeMm / 2) <= tracedWithinMm;

const fitsOutline = ({ widthMm, heightMm, outlineMm }: HoleSizes): boolean =>
  outlineMm === undefined ||
  (isCentred(extentOf(outlineMm.map(([x]) => x)), widthMm) &&
    isCentred(extentOf(outlineMm.map(([, y]) => y)), heightMm));

/** A hole as it was measured: a rectangle, with the radius of its corners; a round one; or one traced, about the middle of its extents. */
export const holeSchema = z
  .strictObject({
    shape: z.enum(['rectangle', 'round', 'traced']),
    widthMm: sizeMm,
    heightMm: sizeMm,
    cornerMm: z.exactOptional(spaceMm),
    /** points about the middle of the hole, x to the right, y up, as seen from the front */
    outlineMm: z.exactOptional(z.array(pointSchema).min(3).max(400)),
  })
  .refine(({ shape, outlineMm }) => (shape === 'traced') === (outlineMm !== undefined), {
    message: 'A traced hole has an outline, any other has none.',
    path: ['outlineMm'],
  })
  .refine(({ shape, widthMm, heightMm }) => shape !== 'round' || widthMm === heightMm, {
    message: 'A round hole is as high as it is wide; trace one that is not.',
    path: ['heightMm'],
  })
  .refine(
    ({ shape, widthMm, heightMm, cornerMm }) =>
      cornerMm === undefined || (shape === 'rectangle' && cornerMm <= Math.min(widthMm, heightMm) / 2),
    {
      message: 'The corners of a rectangle are at most half its shorter side; no other hole has any.',
      path: ['cornerMm'],
    },
  )
  .refine(fitsOutline, {
    message: 'The outline lies about the middle of the hole and is as wide and high as it.',
    path: ['outlineMm'],
  });

export type Hole = z.infer<typeof holeSchema>;

/** A screw hole, from the middle of the hole or cut-out it belongs to, x to the right, y up. */
export const screwSchema = z.strictObject({
  xMm: offsetMm,
  yMm: offsetMm,
  holeMm: z.number().positive().max(30).meta({ unit: 'mm' }),
});

export const panelMaterials = [
  'grp',
  'aluminium',
  'steel',
  'plywood',
  'wood',
  'acrylic',
  'polycarbonate',
  'hdpe',
] as const;

const panelSchema = z.strictObject({
  material: z.enum(panelMaterials),
  /** of the skin, where there is a core behind it */
  thicknessMm: z.number().positive().max(200).meta({ unit: 'mm' }),
  core: z.exactOptional(
    z.strictObject({
      material: z.enum(['plywood', 'balsa', 'foam', 'wood']),
      thicknessMm: z.number().positive().max(200).meta({ unit: 'mm' }),
    }),
  ),
  /** from the edge of the hole to the free edge of the panel, a rib or a curve, on each side */
  edgesMm: z.exactOptional(
    z.strictObject({
      left: z.exactOptional(spaceMm),
      right: z.exactOptional(spaceMm),
      above: z.exactOptional(spaceMm),
      below: z.exactOptional(spaceMm),
    }),
  ),
  /** how far it is from flat over 300 mm */
  unevenMm: z.exactOptional(z.number().min(0).max(100).meta({ unit: 'mm' })),
});

const obstacleSchema = z.strictObject({
  what: shortText,
  /** its middle from the middle of the hole */
  xMm: offsetMm,
  yMm: offsetMm,
  widthMm: sizeMm,
  heightMm: sizeMm,
  /** from the face of the panel back to where it begins; absent: at the back of the panel */
  fromMm: z.exactOptional(spaceMm),
});

const behindSchema = z.strictObject({
  /** from the face of the panel to what is behind */
  depthMm: z.exactOptional(spaceMm),
  how: z.exactOptional(howSchema),
  /** clear width and height of the room behind */
  widthMm: z.exactOptional(sizeMm),
  heightMm: z.exactOptional(sizeMm),
  air: z.exactOptional(z.enum(['free', 'vents', 'closed'])),
  obstacles: z.exactOptional(z.array(obstacleSchema).max(40)),
});

const tracedSchema = z
  .strictObject({
    picture: pictureSchema,
    from: z.strictObject({ xPx: pixelSchema, yPx: pixelSchema }),
    to: z.strictObject({ xPx: pixelSchema, yPx: pixelSchema }),
    /** how far the two points are apart on the panel */
    apartMm: sizeMm,
  })
  .refine(({ from, to }) => Math.hypot(from.xPx - to.xPx, from.yPx - to.yPx) >= 1, {
    message: 'The two points of the picture are one; a scale takes two.',
    path: ['to'],
  });

export const plateMaterials = ['grp', 'aluminium', 'acrylic', 'polycarbonate', 'hdpe', 'plywood'] as const;

const plateWishSchema = z.strictObject({
  /** openings of one place with the same id share one plate */
  id: idSchema,
  overlapMm: z.exactOptional(z.number().min(5).max(300).meta({ unit: 'mm' })),
  material: z.exactOptional(z.enum(plateMaterials)),
  thicknessMm: z.exactOptional(z.number().positive().max(50).meta({ unit: 'mm' })),
});
export type PlateWish = z.infer<typeof plateWishSchema>;

/** What can become of an opening. */
export const openingVerdicts = ['as-it-is', 'enlarge', 'plate', 'elsewhere', 'close', 'same-hole'] as const;

/** A hole in a panel, or in the hull, and what is to come there. */
export const openingSchema = z.strictObject({
  id: idSchema,
  name: shortText,
  place: idSchema,
  hole: holeSchema,
  /** the middle of the hole from a mark that all openings of the place share, x to the right, y up, as seen from the front */
  atMm: z.exactOptional(pointSchema),
  /** old screw holes, from the middle of the hole */
  screws: z.exactOptional(z.array(screwSchema).max(40)),
  panel: panelSchema,
  behind: z.exactOptional(behindSchema),
  how: howSchema,
  traced: z.exactOptional(tracedSchema),
  /** it goes through the hull */
  throughHull: z.exactOptional(z.boolean()),
  /** the unit that comes there, or stays; absent: nothing does */
  for: z.exactOptional(idSchema),
  plate: z.exactOptional(plateWishSchema),
  /** what a person has decided, whatever is computed */
  instead: z.exactOptional(z.strictObject({ verdict: z.enum(openingVerdicts), reason: z.string().min(1).max(400) })),
  /** from where it is looked at and worked */
  viewed: z.exactOptional(
    z.strictObject({
      /** from the eye to the middle of the face */
      distanceM: metresSchema,
      eyeAboveM: z.exactOptional(z.number().min(-5).max(5).meta({ unit: 'm' })),
      /** from the shoulder to the face */
      reachM: z.exactOptional(metresSchema),
      gloves: z.exactOptional(z.boolean()),
    }),
  ),
  /** it is to be cut now, so its template must be one to cut from */
  toCut: z.exactOptional(z.boolean()),
});
export type Opening = z.infer<typeof openingSchema>;
