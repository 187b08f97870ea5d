import type { Rule } from '../rule.ts';
import { antennasTooNear } from './antennas-too-near.ts';
import { coaxKindUnknown } from './coax-kind-unknown.ts';
import { coaxLosesTooMuch } from './coax-loses-too-much.ts';
import { inTheScannerPlane } from './in-the-scanner-plane.ts';
import { noOpenSky } from './no-open-sky.ts';
import { peopleInTheBeam } from './people-in-the-beam.ts';
import { peopleNearAntenna } from './people-near-antenna.ts';
import { positionAntennaNearTransmitter } from './position-antenna-near-transmitter.ts';
import { scannerHasNoRoom } from './scanner-has-no-room.ts';
import { scannersTooNear } from './scanners-too-near.ts';
import { shadowSectors } from './shadow-sectors.ts';

/** The rules of this area. */
export const antennasRules: readonly Rule[] = [
  antennasTooNear,
  coaxKindUnknown,
  coaxLosesTooMuch,
  inTheScannerPlane,
  noOpenSky,
  peopleInTheBeam,
  peopleNearAntenna,
  positionAntennaNearTransmitter,
  scannerHasNoRoom,
  scannersTooNear,
  shadowSectors,
];
