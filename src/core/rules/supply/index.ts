import type { Rule } from '../rule.ts';
import { circuitsShort } from './circuits-short.ts';
import { converterOverloaded } from './converter-overloaded.ts';
import { fedByNothing } from './fed-by-nothing.ts';
import { fedTwice } from './fed-twice.ts';
import { fuseTooFarFromSource } from './fuse-too-far-from-source.ts';
import { interruptTooLow } from './interrupt-too-low.ts';
import { lowVoltUnitOnHighVoltPanel } from './low-volt-unit-on-high-volt-panel.ts';
import { mainOverFeeder } from './main-over-feeder.ts';
import { midTap } from './mid-tap.ts';
import { mixedVolts } from './mixed-volts.ts';
import { noCommonNegative } from './no-common-negative.ts';
import { noFuseAtSource } from './no-fuse-at-source.ts';
import { oneConverterForAllRadio } from './one-converter-for-all-radio.ts';
import { oneFuseTakesAll } from './one-fuse-takes-all.ts';
import { rebootsWhileCranking } from './reboots-while-cranking.ts';
import { screenSharesWithMotor } from './screen-shares-with-motor.ts';
import { sharedCircuitWithoutOwnFuses } from './shared-circuit-without-own-fuses.ts';
import { startBankFeed } from './start-bank-feed.ts';
import { startNotIsolated } from './start-not-isolated.ts';

/** What banks, converters and panels owe what hangs on them. */
export const supplyRules: readonly Rule[] = [
  circuitsShort,
  converterOverloaded,
  fedByNothing,
  fedTwice,
  fuseTooFarFromSource,
  interruptTooLow,
  lowVoltUnitOnHighVoltPanel,
  mainOverFeeder,
  midTap,
  mixedVolts,
  noCommonNegative,
  noFuseAtSource,
  oneConverterForAllRadio,
  oneFuseTakesAll,
  rebootsWhileCranking,
  screenSharesWithMotor,
  sharedCircuitWithoutOwnFuses,
  startBankFeed,
  startNotIsolated,
];
