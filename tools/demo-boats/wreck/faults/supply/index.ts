import type { Fault } from '../../fault.ts';
import { supplyCircuitsShort } from './circuits-short.ts';
import { supplyConverterOverloaded } from './converter-overloaded.ts';
import { supplyFedByNothing } from './fed-by-nothing.ts';
import { supplyFedTwice } from './fed-twice.ts';
import { supplyFuseTooFarFromSource } from './fuse-too-far-from-source.ts';
import { supplyInterruptTooLow } from './interrupt-too-low.ts';
import { supplyLowVoltUnitOnHighVoltPanel } from './low-volt-unit-on-high-volt-panel.ts';
import { supplyMainOverFeeder } from './main-over-feeder.ts';
import { supplyMidTap } from './mid-tap.ts';
import { supplyMixedVolts } from './mixed-volts.ts';
import { supplyNoCommonNegative } from './no-common-negative.ts';
import { supplyNoFuseAtSource } from './no-fuse-at-source.ts';
import { supplyOneConverterForAllRadio } from './one-converter-for-all-radio.ts';
import { supplyOneFuseTakesAll } from './one-fuse-takes-all.ts';
import { supplyRebootsWhileCranking } from './reboots-while-cranking.ts';
import { supplyScreenSharesWithMotor } from './screen-shares-with-motor.ts';
import { supplySharedCircuitWithoutOwnFuses } from './shared-circuit-without-own-fuses.ts';
import { supplyStartBankFeed } from './start-bank-feed.ts';
import { supplyStartNotIsolated } from './start-not-isolated.ts';

/** The faults of this area, one a rule. */
export const supplyFaults: readonly Fault[] = [
  supplyCircuitsShort,
  supplyConverterOverloaded,
  supplyFedByNothing,
  supplyFedTwice,
  supplyFuseTooFarFromSource,
  supplyInterruptTooLow,
  supplyLowVoltUnitOnHighVoltPanel,
  supplyMainOverFeeder,
  supplyMidTap,
  supplyMixedVolts,
  supplyNoCommonNegative,
  supplyNoFuseAtSource,
  supplyOneConverterForAllRadio,
  supplyOneFuseTakesAll,
  supplyRebootsWhileCranking,
  supplyScreenSharesWithMotor,
  supplySharedCircuitWithoutOwnFuses,
  supplyStartBankFeed,
  supplyStartNotIsolated,
];
