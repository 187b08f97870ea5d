import type { Fault } from '../../fault.ts';
import { isolationBraidToHull } from './braid-to-hull.ts';
import { isolationCaseToHull } from './case-to-hull.ts';
import { isolationEngineNotIsolated } from './engine-not-isolated.ts';
import { isolationHousingOnMetalHull } from './housing-on-metal-hull.ts';
import { isolationNotLookedAt } from './not-looked-at.ts';
import { isolationRadarBaseToHull } from './radar-base-to-hull.ts';
import { isolationShieldEarthedTwice } from './shield-earthed-twice.ts';
import { isolationShieldNotEarthed } from './shield-not-earthed.ts';
import { isolationSpeakerToHull } from './speaker-to-hull.ts';
import { isolationSuppliesTied } from './supplies-tied.ts';
import { isolationTransducerToHull } from './transducer-to-hull.ts';

/** Faults of isolation and shields. */
export const isolationFaults: readonly Fault[] = [
  isolationBraidToHull,
  isolationCaseToHull,
  isolationEngineNotIsolated,
  isolationHousingOnMetalHull,
  isolationNotLookedAt,
  isolationRadarBaseToHull,
  isolationShieldEarthedTwice,
  isolationShieldNotEarthed,
  isolationSpeakerToHull,
  isolationSuppliesTied,
  isolationTransducerToHull,
];
