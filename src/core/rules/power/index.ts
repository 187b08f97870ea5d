import type { Rule } from '../rule.ts';
import { cannotWork } from './cannot-work.ts';
import { dropTooBig } from './drop-too-big.ts';
import { feederLosesTooMuch } from './feeder-loses-too-much.ts';
import { fuseOverWire } from './fuse-over-wire.ts';
import { fuseUnderLoad } from './fuse-under-load.ts';
import { littleInHand } from './little-in-hand.ts';
import { noFuseDoes } from './no-fuse-does.ts';
import { noWireDoes } from './no-wire-does.ts';
import { nothingFeedsIt } from './nothing-feeds-it.ts';
import { peakTakesTheVolts } from './peak-takes-the-volts.ts';
import { slowFuseNeeded } from './slow-fuse-needed.ts';
import { voltsAtPlugTooLow } from './volts-at-plug-too-low.ts';
import { wireOverItsCurrent } from './wire-over-its-current.ts';
import { wireSizeUnknown } from './wire-size-unknown.ts';
import { wireUnderLeastSize } from './wire-under-least-size.ts';

/** The rules of this area. */
export const powerRules: readonly Rule[] = [
  cannotWork,
  dropTooBig,
  feederLosesTooMuch,
  fuseOverWire,
  fuseUnderLoad,
  littleInHand,
  noFuseDoes,
  noWireDoes,
  nothingFeedsIt,
  peakTakesTheVolts,
  slowFuseNeeded,
  voltsAtPlugTooLow,
  wireOverItsCurrent,
  wireSizeUnknown,
  wireUnderLeastSize,
];
