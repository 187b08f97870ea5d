import * as z from 'zod';
import { openingVerdicts, plateMaterials } from './boat/opening.ts';

// The part of a plan that tells of every opening: whether what comes there fits, and of what plate it takes.
const id = z.string();
const mm = z.number().meta({ unit: 'mm' });
const point = z.tuple([mm, mm]);

/** One outline, from the middle of the hole of its opening, or of its plate: x to the right, y up, as seen from the front. */
export const mmShapeSchema = z.strictObject({
  shape: z.enum(['rectangle', 'round', 'traced']),
  xMm: mm,
  yMm: mm,
  widthMm: mm,
  heightMm: mm,
  cornerMm: z.exactOptional(mm),
  /** its points, of a traced one, from its own middle */
  outlineMm: z.exactOptional(z.array(point)),
});
export type MmShape = z.infer<typeof mmShapeSchema>;

export const sides = ['left', 'right', 'above', 'below'] as const;
const sideSchema = z.enum(sides);
export type Side = z.infer<typeof sideSchema>;

const screwFitSchema = z.strictObject({
  xMm: mm,
  yMm: mm,
  holeMm: mm,
  /** to the nearest edge of a hole; below nothing where it lands in air */
  edgeMm: mm,
  needMm: mm,
});

const behindFitSchema = z.strictObject({
  bodyMm: mm,
  /** what its plugs and the bend of their cables take, the larger of the sheet’s figure and the bend of its thickest cable */
  plugsMm: mm,
  /** the thickest cable that bends there, and its line; absent where none is known */
  cableMm: z.exactOptional(mm),
  line: z.exactOptional(z.string()),
  needMm: mm,
  freeMm: z.exactOptional(mm),
});

const viewFitSchema = z.strictObject({
  /** least height of letters at that distance, and the height below which nobody reads them */
  lettersMm: mm,
  floorMm: mm,
  /** of its smallest letters that matter; absent where the sheet does not say */
  hasMm: z.exactOptional(mm),
  belowEyeDeg: z.exactOptional(z.number().meta({ unit: '°' })),
  reachMm: z.exactOptional(mm),
});

/** What became of the geometry: the four cases of a new unit over an old hole. */
export const openingCases = ['inside-cutout', 'under-bezel', 'shows', 'no-room'] as const;

/** Why no template may be cut from. */
export const notForCutting = ['typical-sizes', 'guessed-hole'] as const;

/** One opening, with what is to come there. */
export const fitEntrySchema = z.strictObject({
  opening: id,
  place: id,
  /** the unit that comes there or stays */
  unit: z.exactOptional(id),
  /** `not-known` where its sheet gives no sizes */
  verdict: z.enum([...openingVerdicts, 'not-known']),
  /** what is computed, where a person has decided otherwise */
  computed: z.exactOptional(z.enum([...openingVerdicts, 'not-known'])),
  /** a person’s reason for that */
  reason: z.exactOptional(z.string()),
  case: z.exactOptional(z.enum(openingCases)),
  plate: z.exactOptional(id),
  hole: mmShapeSchema,
  /** where the unit is set best over the hole: what is cut for it, and what its bezel covers */
  cut: z.exactOptional(mmShapeSchema),
  bezel: z.exactOptional(mmShapeSchema),
  /** how far its middle is set from the middle of the hole */
  setOffMm: z.exactOptional(point),
  /** what of the hole is not covered by the bezel less the land of its gasket: how wide on each side, the area, the outlines */
  uncovered: z.exactOptional(
    z.strictObject({
      widestMm: mm,
      sides: z.array(z.strictObject({ side: sideSchema, mm })),
      areaMm2: z.number().meta({ unit: 'mm²' }),
      slivers: z.array(z.array(point)),
    }),
  ),
  /** its screws; absent where the sheet does not say where they are */
  screws: z.exactOptional(z.array(screwFitSchema)),
  /** old screw holes to fill: how many, and how many of them nothing covers */
  oldScrews: z.exactOptional(z.strictObject({ count: z.int(), bare: z.int() })),
  /** solid panel left to a free edge once it is cut */
  margins: z.exactOptional(z.array(z.strictObject({ side: sideSchema, leftMm: mm, needMm: mm }))),
  /** solid panel between it and another opening at the place */
  webs: z.exactOptional(z.array(z.strictObject({ to: id, leftMm: mm, needMm: mm }))),
  /** what its bezel or plate lies over of another’s at the place */
  crowds: z.exactOptional(z.array(z.strictObject({ with: id, byMm: mm }))),
  /** how much of the panel is cut away by all its openings */
  cutAwayPct: z.exactOptional(z.number().meta({ unit: '%' })),
  behind: z.exactOptional(behindFitSchema),
  /** what is in its way behind, by how much on the panel */
  obstacles: z.exactOptional(z.array(z.strictObject({ what: z.string(), byMm: mm, fromMm: mm }))),
  /** air left beside and above it in the room behind */
  air: z.exactOptional(z.array(z.strictObject({ side: sideSchema, leftMm: mm, needMm: mm }))),
  /** how much warmer it gets in a closed room */
  heat: z.exactOptional(
    z.strictObject({
      powerW: z.number().meta({ unit: 'W' }),
      areaM2: z.number().meta({ unit: 'm²' }),
      riseK: z.number().meta({ unit: 'K' }),
    }),
  ),
  view: z.exactOptional(viewFitSchema),
  /** what the place asks of an IP code, what its sheet says, and whether that is enough; absent where it asks nothing */
  water: z.exactOptional(
    z.strictObject({
      need: z.array(z.string()),
      has: z.exactOptional(z.string()),
      enough: z.exactOptional(z.boolean()),
    }),
  ),
  /** why its template may not be cut from; absent where it may, or where nothing is cut */
  notForCutting: z.exactOptional(z.array(z.enum(notForCutting))),
});
export type FitEntry = z.infer<typeof fitEntrySchema>;

/** One plate over one or several openings, from its own middle; a blind one where no unit is set in it. */
export const plateEntrySchema = z.strictObject({
  id,
  place: id,
  /** its openings, and where the middle of the hole of each lies */
  openings: z.array(z.strictObject({ opening: id, xMm: mm, yMm: mm, unit: z.exactOptional(id) })),
  outline: mmShapeSchema,
  /** what is cut in it, each with its unit */
  cuts: z.array(z.strictObject({ unit: id, cut: mmShapeSchema })),
  /** screws of the plate itself, and of the units in it */
  screws: z.array(z.strictObject({ xMm: mm, yMm: mm, holeMm: mm, of: z.exactOptional(id) })),
  /** openings whose hole in the panel is cut wider under it, because a unit in it does not pass */
  widens: z.array(id),
  overlapMm: mm,
  material: z.enum(plateMaterials),
  /** as wished or as its material usually is, least and most */
  thicknessMm: mm,
  usualMm: point,
  notForCutting: z.exactOptional(z.array(z.enum(notForCutting))),
});
export type PlateEntry = z.infer<typeof plateEntrySchema>;

/** What a plan says of openings. */
export const fitsEntriesSchema = { fits: z.array(fitEntrySchema), plates: z.array(plateEntrySchema) };
