import type { Boat } from '../../../src/core/boat/boat-schema.ts';
import { wreckBase } from './base.ts';
import type { Fault } from './fault.ts';
import { antennasFaults } from './faults/antennas/index.ts';
import { blackoutFaults } from './faults/blackouts/index.ts';
import { busFaults } from './faults/bus/index.ts';
import { compassFaults } from './faults/compass/index.ts';
import { convertersFaults } from './faults/converters/index.ts';
import { energyFaults } from './faults/energy/index.ts';
import { fittingFaults } from './faults/fitting/index.ts';
import { identitiesFaults } from './faults/identities/index.ts';
import { isolationFaults } from './faults/isolation/index.ts';
import { networkFaults } from './faults/network/index.ts';
import { phasesFaults } from './faults/phases/index.ts';
import { plugsFaults } from './faults/plugs/index.ts';
import { powerFaults } from './faults/power/index.ts';
import { provenanceFaults } from './faults/provenance/index.ts';
import { readingsFaults } from './faults/readings/index.ts';
import { remoteFaults } from './faults/remote/index.ts';
import { screensFaults } from './faults/screens/index.ts';
import { sensorsFaults } from './faults/sensors/index.ts';
import { settingsFaults } from './faults/settings/index.ts';
import { shoppingFaults } from './faults/shopping/index.ts';
import { steeringFaults } from './faults/steering/index.ts';
import { supplyFaults } from './faults/supply/index.ts';
import { trafficFaults } from './faults/traffic/index.ts';
import { waysFaults } from './faults/ways/index.ts';
import { wiringFaults } from './faults/wiring/index.ts';
import { workFaults } from './faults/work/index.ts';

/** Every fault planted in the Wreck, one a rule, area by area. */
export const faults: readonly Fault[] = [
  ...antennasFaults,
  ...blackoutFaults,
  ...busFaults,
  ...compassFaults,
  ...convertersFaults,
  ...energyFaults,
  ...fittingFaults,
  ...identitiesFaults,
  ...isolationFaults,
  ...networkFaults,
  ...phasesFaults,
  ...plugsFaults,
  ...powerFaults,
  ...provenanceFaults,
  ...readingsFaults,
  ...remoteFaults,
  ...screensFaults,
  ...sensorsFaults,
  ...settingsFaults,
  ...shoppingFaults,
  ...supplyFaults,
  ...steeringFaults,
  ...trafficFaults,
  ...waysFaults,
  ...wiringFaults,
  ...workFaults,
];

/**
 * The Wreck with every fault planted, or her twin without those that break the given rules.
 *
 * @example wreck('bus/drop-too-long') // every fault but the long drop
 */
export const wreck = (...without: readonly string[]): Boat =>
  faults.filter((fault) => !without.includes(fault.rule)).reduce((boat, fault) => fault.plant(boat), wreckBase);
