import * as z from 'zod';

// The part of a plan that tells of a radar: where its beam goes, who stands in it, what stands in its way.
const id = z.string();
const metres = z.number().meta({ unit: 'm' });
const degrees = z.number().meta({ unit: '°' });

/** Somebody who stands on a place, and the beam there: between `beamFromM` and `beamToM` over the water. */
const personSchema = z.strictObject({
  place: id,
  /** across the water, scanner to head */
  distanceM: metres,
  headM: metres,
  beamFromM: metres,
  beamToM: metres,
  inBeam: z.boolean(),
  /** whether the boat file says how high the sole is */
  soleKnown: z.boolean(),
});
export type PersonAtRadar = z.infer<typeof personSchema>;

/** What stands in the beam: the arc it covers as seen from the scanner, clockwise from ahead, and what to blank. */
const shadowSchema = z.strictObject({
  by: id,
  kind: z.enum(['mast', 'unit']),
  distanceM: metres,
  acrossM: metres,
  fromDeg: degrees,
  toDeg: degrees,
  blankFromDeg: degrees,
  blankToDeg: degrees,
  /** an array wider than what stands before it sees a little past it */
  isTotal: z.boolean(),
});
export type Shadow = z.infer<typeof shadowSchema>;

/** A unit near the scanner, and how far it stands over or under the plane it turns in. */
const neighbourSchema = z.strictObject({
  unit: id,
  distanceM: metres,
  offPlaneDeg: degrees,
  inPlane: z.boolean(),
  inTurn: z.boolean(),
});

/** The beam with the boat on her side: where the sea is first lit to windward, and the bearings at which the horizon is lost on either side. */
const heelSchema = z.strictObject({
  heelDeg: degrees,
  /** absent where the beam never meets the sea there */
  weatherM: z.exactOptional(metres),
  lostFromDeg: z.exactOptional(degrees),
  lostToDeg: z.exactOptional(degrees),
});

export const radarSchema = z.strictObject({
  beamDeg: degrees,
  beamBy: z.enum(['sheet', 'kind']),
  horizonNm: z.number().meta({ unit: 'nm' }),
  /** where the lower edge of its beam meets the sea, and from where it sees at all: that or its own least range */
  nearM: metres,
  blindM: metres,
  /** of a sailing boat */
  heel: z.exactOptional(z.array(heelSchema)),
  /** how far people keep off its beam, and what says so */
  peopleM: z.exactOptional(metres),
  peopleBy: z.enum(['plate', 'typical', 'size', 'unknown']),
  people: z.array(personSchema),
  acrossM: metres,
  shadows: z.array(shadowSchema),
  /** shadows as sectors, those close together as one, and what the guideline for ships makes of them */
  sectors: z.array(z.strictObject({ fromDeg: degrees, toDeg: degrees })),
  largestDeg: degrees,
  totalDeg: degrees,
  isAhead: z.boolean(),
  guidelineMet: z.boolean(),
  /** the sea seen past the bow from there, and from where the guideline wants it seen */
  bowSeenM: z.exactOptional(metres),
  bowLimitM: metres,
  neighbours: z.array(neighbourSchema),
  /** loss in its feed at its peak */
  feed: z.exactOptional(
    z.strictObject({ line: id, peakA: z.number().meta({ unit: 'A' }), dropV: z.number().meta({ unit: 'V' }) }),
  ),
  /** what one degree of error in its heading line comes to at one mile */
  degreeAtMileM: metres,
});
export type Radar = z.infer<typeof radarSchema>;

/** Two scanners beside each other. */
export const scannerPairSchema = z.strictObject({
  one: id,
  other: id,
  acrossM: metres,
  upM: metres,
  verdict: z.enum(['ok', 'advice']),
});
export type ScannerPair = z.infer<typeof scannerPairSchema>;
