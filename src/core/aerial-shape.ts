import * as z from 'zod';
import { aerialUses } from './boat/aerial.ts';
import { coaxKindSchema } from './boat/coax.ts';

// The part of a plan that tells of antennas: how far each reaches, what its coax loses, how far they stand apart.
const id = z.string();
const metres = z.number().meta({ unit: 'm' });
const decibels = z.number().meta({ unit: 'dB' });
const watts = z.number().meta({ unit: 'W' });
const miles = z.number().meta({ unit: 'nm' });

/** What stands over the horizon of a position antenna by more than 5 degrees. */
const inTheSkySchema = z.strictObject({
  by: id,
  kind: z.enum(['mast', 'unit']),
  /** seen from the antenna, clockwise from ahead; half of its width to either side */
  bearingDeg: z.number().meta({ unit: '°' }),
  wideDeg: z.number().meta({ unit: '°' }),
  upDeg: z.number().meta({ unit: '°' }),
});

/** What is reckoned of one antenna. */
export const aerialSchema = z.strictObject({
  for: z.array(z.enum(aerialUses)),
  /** of its tip over the water */
  topM: metres,
  gainDbi: z.exactOptional(z.number().meta({ unit: 'dBi' })),
  gainBy: z.exactOptional(z.enum(['sheet', 'taken'])),
  /** of a radio antenna: to the horizon, and to other stations by the heights of theirs; best case by geometry */
  horizonNm: z.exactOptional(miles),
  ranges: z.exactOptional(z.array(z.strictObject({ to: id, heightM: metres, rangeNm: miles }))),
  /** the strongest radio that sends by it, and how far people keep off it */
  sends: z.exactOptional(z.strictObject({ radio: id, powerW: watts, peopleM: metres })),
  /** people who stand within that: the place, and how near */
  near: z.exactOptional(z.array(z.strictObject({ place: id, distanceM: metres }))),
  /** of a position antenna: whether it stands in the open, and what stands up round it */
  inOpen: z.exactOptional(z.boolean()),
  sky: z.exactOptional(z.array(inTheSkySchema)),
});
export type Aerial = z.infer<typeof aerialSchema>;

/** One coax of a run: what it is made of and how that is known, and what it loses. */
const coaxPieceSchema = z.strictObject({
  line: id,
  /** the cable where one aboard is kept */
  cable: z.exactOptional(id),
  kind: z.exactOptional(coaxKindSchema),
  /** chosen by the plan, settled by a person, of this very part, by its name only, or the worst of its thickness */
  by: z.enum(['plan', 'pin', 'part', 'name', 'thickness']),
  lengthM: metres,
  dbPer100M: decibels,
  lossDb: decibels,
});
export type CoaxPiece = z.infer<typeof coaxPieceSchema>;

/** The whole way from a radio to its antenna at its longest: two sums, with sound joints and with weathered ones. */
export const coaxRunSchema = z.strictObject({
  /** `kit.port` */
  radio: id,
  antenna: id,
  /** units between them: a splitter, an arrester; what they lose is on their sheets, not in these sums */
  through: z.exactOptional(z.array(id)),
  pieces: z.array(coaxPieceSchema),
  mhz: z.number().meta({ unit: 'MHz' }),
  lengthM: metres,
  joints: z.int(),
  cableDb: decibels,
  soundDb: decibels,
  weatheredDb: decibels,
  use: z.enum(['new', 'kept']),
  judgedBy: z.enum(['sound', 'weathered']),
  verdict: z.enum(['ok', 'advice', 'doubt', 'fault']),
  /** that leave the radio and that arrive, with sound joints and with weathered ones */
  powerW: z.exactOptional(watts),
  soundW: z.exactOptional(watts),
  weatheredW: z.exactOptional(watts),
  /** share of its range that a weak signal keeps */
  rangeShare: z.number(),
  /** what is read at the radio with an antenna behind this cable that is at the fault mark itself */
  faultReadsSwr: z.number(),
});
export type CoaxRun = z.infer<typeof coaxRunSchema>;

/** Two antennas, one of which sends. */
export const spacingSchema = z.strictObject({
  one: id,
  other: id,
  what: z.enum(['ais', 'radios', 'position']),
  /** nearest part to nearest part */
  distanceM: metres,
  /** centre to centre */
  acrossM: metres,
  upM: metres,
  how: z.enum(['level', 'stacked', 'slant']),
  /** between two radio antennas; an estimate below one wavelength and on a slant */
  isolationDb: z.exactOptional(decibels),
  isEstimate: z.exactOptional(z.boolean()),
  /** what arrives at one while the other sends */
  coupledDbm: z.exactOptional(z.number().meta({ unit: 'dBm' })),
  verdict: z.enum(['ok', 'advice', 'doubt']),
  limitM: z.exactOptional(metres),
});
export type Spacing = z.infer<typeof spacingSchema>;
