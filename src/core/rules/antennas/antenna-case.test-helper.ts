import type { CoaxRun, Spacing } from '../../aerial-shape.ts';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Finding, PlanDraft } from '../../plan-shape.ts';
import type { PersonAtRadar, Radar } from '../../radar-shape.ts';
import type { SiteEntry } from '../../sites-shape.ts';
import type { Rule } from '../rule.ts';
import { findingsOf } from '../rule-case.test-helper.ts';

/** Two antennas that stand as they should; a case changes what it is about. */
export const aSpacing = (own: Partial<Spacing>): Spacing => ({
  one: 'radio',
  other: 'gnss',
  what: 'ais',
  distanceM: 12,
  acrossM: 12,
  upM: 0,
  how: 'level',
  isolationDb: 32,
  isEstimate: false,
  coupledDbm: 12,
  verdict: 'ok',
  limitM: 10,
  ...own,
});

/** A run of kept coax that loses little. */
export const aRun = (own: Partial<CoaxRun>): CoaxRun => ({
  radio: 'radio.rf',
  antenna: 'gnss',
  pieces: [],
  mhz: 156.8,
  lengthM: 10,
  joints: 2,
  cableDb: 1,
  soundDb: 1.1,
  weatheredDb: 1.5,
  use: 'kept',
  judgedBy: 'weathered',
  verdict: 'ok',
  powerW: 25,
  soundW: 19.4,
  weatheredW: 17.7,
  rangeShare: 0.92,
  faultReadsSwr: 2.1,
  ...own,
});

/** Somebody at the helm whose head is in the beam. */
export const personAtRadar = (own: Partial<PersonAtRadar>): PersonAtRadar => ({
  place: 'helm',
  distanceM: 1.5,
  headM: 2.4,
  beamFromM: 2.2,
  beamToM: 2.8,
  inBeam: true,
  soleKnown: true,
  ...own,
});

const clearRadar: Radar = {
  beamDeg: 25,
  beamBy: 'sheet',
  horizonNm: 5,
  nearM: 20,
  blindM: 20,
  peopleM: 2,
  peopleBy: 'plate',
  people: [],
  acrossM: 0.6,
  shadows: [],
  sectors: [],
  largestDeg: 0,
  totalDeg: 0,
  isAhead: false,
  guidelineMet: true,
  bowLimitM: 20,
  neighbours: [],
  degreeAtMileM: 32.3,
};

/** A radar that sees everything and lights nobody, but for what is said. */
export const aRadar = (own: Partial<Radar>): SiteEntry => ({
  unit: 'display',
  is: 'radar',
  place: 'stern-rail',
  aboveWaterM: 5,
  radar: { ...clearRadar, ...own },
});

/** A site of an antenna. */
export const anAntenna = (is: SiteEntry['is'], aerial: NonNullable<SiteEntry['aerial']>): SiteEntry => ({
  unit: 'gnss',
  is,
  place: 'stern-rail',
  aboveWaterM: 2,
  aerial,
});

/** What a rule of antennas finds with some parts of the plan as said. */
export const antennaFindings = (rule: Rule, plan: Partial<PlanDraft>, boat: Boat = aBoat().boat): Finding[] =>
  findingsOf(rule, { plan, boat });
