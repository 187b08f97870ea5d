import type { BoatIndex } from '../boat/boat-index.ts';
import type { BusEntry, PlanDraft, StandingJoin } from '../plan-shape.ts';
import { antennaSpacings } from './antennas/antenna-spacings.ts';
import { coaxRuns } from './antennas/coax-runs.ts';
import { radioAntennas } from './antennas/radio-antennas.ts';
import { planOpenings } from './openings/plan-openings.ts';
import { planSites } from './plan-sites.ts';
import { scannerPairs } from './radar/scanner-pairs.ts';
import { withAerials } from './with-aerials.ts';
import { withSensors } from './with-sensors.ts';

/** What a plan says of fitting. */
export type FittingPart = Pick<PlanDraft, 'sites' | 'coax' | 'spacings' | 'scanners' | 'fits' | 'plates'>;

/** What fitting is planned from: the boat, her lines with their feeds, who is joined to whom, and what is near her compasses. */
export interface FittingInput extends Pick<PlanDraft, 'lines' | 'feeds' | 'compass'> {
  readonly index: BoatIndex;
  readonly joins: readonly StandingJoin[];
  readonly buses: readonly Pick<BusEntry, 'id' | 'grade'>[];
}

/** Whether everything fits where it is to go, and works there. */
export const planFitting = (input: FittingInput): FittingPart => {
  const { index, joins, lines, feeds } = input;
  const on = radioAntennas(index, joins);
  const sites = withAerials(index, withSensors(input, planSites(index)), { on, feeds });
  return {
    ...planOpenings(input),
    sites,
    coax: coaxRuns(index, on, lines),
    spacings: antennaSpacings(index, sites, on),
    scanners: scannerPairs(index, sites),
  };
};
