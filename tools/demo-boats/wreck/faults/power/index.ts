import type { Fault } from '../../fault.ts';
import { powerCannotWork } from './cannot-work.ts';
import { powerDropTooBig } from './drop-too-big.ts';
import { powerFeederLosesTooMuch } from './feeder-loses-too-much.ts';
import { powerFuseOverWire } from './fuse-over-wire.ts';
import { powerFuseUnderLoad } from './fuse-under-load.ts';
import { powerLittleInHand } from './little-in-hand.ts';
import { powerNoFuseDoes } from './no-fuse-does.ts';
import { powerNoWireDoes } from './no-wire-does.ts';
import { powerNothingFeedsIt } from './nothing-feeds-it.ts';
import { powerPeakTakesTheVolts } from './peak-takes-the-volts.ts';
import { powerSlowFuseNeeded } from './slow-fuse-needed.ts';
import { powerVoltsAtPlugTooLow } from './volts-at-plug-too-low.ts';
import { powerWireOverItsCurrent } from './wire-over-its-current.ts';
import { powerWireSizeUnknown } from './wire-size-unknown.ts';
import { powerWireUnderLeastSize } from './wire-under-least-size.ts';

/** The faults of this area, one a rule. */
export const powerFaults: readonly Fault[] = [
  powerCannotWork,
  powerDropTooBig,
  powerFeederLosesTooMuch,
  powerFuseOverWire,
  powerFuseUnderLoad,
  powerLittleInHand,
  powerNoFuseDoes,
  powerNoWireDoes,
  powerNothingFeedsIt,
  powerPeakTakesTheVolts,
  powerSlowFuseNeeded,
  powerVoltsAtPlugTooLow,
  powerWireOverItsCurrent,
  powerWireSizeUnknown,
  powerWireUnderLeastSize,
];
