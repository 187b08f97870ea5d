import type { Rule } from '../rule.ts';
import { braidToHull } from './braid-to-hull.ts';
import { caseToHull } from './case-to-hull.ts';
import { engineNotIsolated } from './engine-not-isolated.ts';
import { housingOnMetalHull } from './housing-on-metal-hull.ts';
import { notLookedAt } from './not-looked-at.ts';
import { radarBaseToHull } from './radar-base-to-hull.ts';
import { shieldEarthedTwice } from './shield-earthed-twice.ts';
import { shieldNotEarthed } from './shield-not-earthed.ts';
import { speakerToHull } from './speaker-to-hull.ts';
import { suppliesTied } from './supplies-tied.ts';
import { transducerToHull } from './transducer-to-hull.ts';

/** The rules of this area. */
export const isolationRules: readonly Rule[] = [
  braidToHull,
  caseToHull,
  engineNotIsolated,
  housingOnMetalHull,
  notLookedAt,
  radarBaseToHull,
  shieldEarthedTwice,
  shieldNotEarthed,
  speakerToHull,
  suppliesTied,
  transducerToHull,
];
