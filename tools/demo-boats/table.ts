import * as z from 'zod';
import { gradeSchema, hullSchema, needSchema, placeSchema, waySchema } from '../../src/core/boat/boat-schema.ts';
import { idSchema } from '../../src/core/boat/ids.ts';
import { measureSchema } from '../../src/core/boat/measure.ts';
import { supplySchema } from '../../src/core/boat/supply.ts';

const kitRowSchema = z.strictObject({
  id: idSchema,
  name: z.string(),
  sheetKind: idSchema,
  fate: z.enum(['stays', 'goes', 'comes']),
  phase: z.exactOptional(z.int()),
  place: idSchema,
  tail: z.exactOptional(measureSchema),
  instance: z.exactOptional(z.int()),
  /** `panel/circuit`, `bus:id`, or the unit that feeds it */
  feed: z.exactOptional(z.string()),
  len: z.exactOptional(z.int()),
  joinedInWords: z.string(),
  buses: z.array(idSchema),
});
export type KitRow = z.infer<typeof kitRowSchema>;

const cableRowSchema = z.strictObject({
  id: idSchema,
  /** in words */
  kind: z.string(),
  from: idSchema,
  to: idSchema,
  ways: z.array(idSchema),
  length: measureSchema,
  diameterMm: z.number(),
  condition: z.enum(['good', 'doubtful', 'bad', 'untested']),
  fate: z.enum(['stays', 'goes']),
});
export type CableRow = z.infer<typeof cableRowSchema>;

const circuitRowSchema = z.strictObject({
  id: idSchema,
  ratingA: z.number(),
  /** in words: "breaker, slow", "fuse, spare" */
  kind: z.string(),
  /** unit, bus or panel ids; a load that is no unit stands in words */
  feeds: z.array(z.string()),
});
export type CircuitRow = z.infer<typeof circuitRowSchema>;

const panelRowSchema = z.strictObject({
  id: idSchema,
  place: idSchema,
  from: idSchema,
  /** absent where the panel sits beside its converter */
  feeder: z.exactOptional(z.strictObject({ cable: idSchema, length: measureSchema, areaMm2: z.number() })),
  mainA: z.number(),
  mainFuse: z.exactOptional(z.unknown()),
  circuits: z.array(circuitRowSchema),
});
export type PanelRow = z.infer<typeof panelRowSchema>;

const openingRowSchema = z.strictObject({
  id: idSchema,
  place: idSchema,
  shape: z.enum(['rectangle', 'round']),
  count: z.exactOptional(z.int()),
  wMm: z.number(),
  hMm: z.number(),
  /** in words */
  panel: z.string(),
  newUnit: z.union([idSchema, z.null()]),
  newBezelMm: z.exactOptional(z.tuple([z.number(), z.number()])),
  newCutMm: z.exactOptional(z.tuple([z.number(), z.number()])),
  depthFreeMm: z.exactOptional(z.number()),
  newDepthMm: z.exactOptional(z.number()),
  /** what is to be done, in words */
  action: z.string(),
});
export type OpeningRow = z.infer<typeof openingRowSchema>;

const designSchema = z.object({
  bus: idSchema,
  grade: gradeSchema,
  walk: z.array(idSchema),
  feedPlace: idSchema,
  trunkM: z.number(),
  trunkLongestM: z.number(),
  devices: z.int(),
  len: z.int(),
  dropsSumM: z.number(),
  longestDropM: z.number(),
  limitM: z.number(),
  tees: z.array(z.object({ kit: idSchema, teeAt: idSchema, dropM: z.number(), dropLongestM: z.number() })),
});

/** The designer's table of one demo boat; what is in words there is turned into joins and supply by hand. */
export const tableSchema = z.object({
  name: z.string(),
  hull: hullSchema,
  places: z.array(placeSchema),
  ways: z.array(waySchema.extend({ straightM: z.number(), runsNow: z.array(z.string()) })),
  cables: z.array(cableRowSchema),
  kit: z.array(kitRowSchema),
  needs: z.array(needSchema),
  supply: z.strictObject({
    banks: supplySchema.shape.banks,
    panels: z.array(panelRowSchema),
    dcdc: supplySchema.shape.dcdc,
  }),
  openings: z.array(openingRowSchema),
  /** layouts drawn and added up by hand */
  goodDesign: z.array(designSchema),
  distances: z.strictObject({
    antennas: z.array(z.tuple([idSchema, idSchema, z.number()])),
    compass: z.array(z.tuple([idSchema, idSchema, z.number()])),
  }),
});
export type Table = z.infer<typeof tableSchema>;
