import { antennasRules } from './antennas/index.ts';
import { blackoutRules } from './blackouts/index.ts';
import { busRules } from './bus/index.ts';
import { compassRules } from './compass/index.ts';
import { convertersRules } from './converters/index.ts';
import { energyRules } from './energy/index.ts';
import { fittingRules } from './fitting/index.ts';
import { identitiesRules } from './identities/index.ts';
import { isolationRules } from './isolation/index.ts';
import { networkRules } from './network/index.ts';
import { phasesRules } from './phases/index.ts';
import { plugsRules } from './plugs/index.ts';
import { powerRules } from './power/index.ts';
import { provenanceRules } from './provenance/index.ts';
import { readingsRules } from './readings/index.ts';
import { remoteRules } from './remote/index.ts';
import type { Rule } from './rule.ts';
import { screensRules } from './screens/index.ts';
import { sensorsRules } from './sensors/index.ts';
import { settingsRules } from './settings/index.ts';
import { shoppingRules } from './shopping/index.ts';
import { steeringRules } from './steering/index.ts';
import { supplyRules } from './supply/index.ts';
import { trafficRules } from './traffic/index.ts';
import { waysRules } from './ways/index.ts';
import { wiringRules } from './wiring/index.ts';
import { workRules } from './work/index.ts';

/** Every rule, area by area. A rule joins the list of its area, and brings its page, its test and its fault in the wreck. */
export const rules: readonly Rule[] = [
  ...antennasRules,
  ...blackoutRules,
  ...busRules,
  ...compassRules,
  ...convertersRules,
  ...energyRules,
  ...fittingRules,
  ...identitiesRules,
  ...isolationRules,
  ...networkRules,
  ...phasesRules,
  ...plugsRules,
  ...powerRules,
  ...provenanceRules,
  ...readingsRules,
  ...remoteRules,
  ...screensRules,
  ...sensorsRules,
  ...settingsRules,
  ...shoppingRules,
  ...supplyRules,
  ...steeringRules,
  ...trafficRules,
  ...waysRules,
  ...wiringRules,
  ...workRules,
];
