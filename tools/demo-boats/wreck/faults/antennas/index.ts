import type { Fault } from '../../fault.ts';
import { antennasAntennasTooNear } from './antennas-too-near.ts';
import { antennasCoaxKindUnknown } from './coax-kind-unknown.ts';
import { antennasCoaxLosesTooMuch } from './coax-loses-too-much.ts';
import { antennasInTheScannerPlane } from './in-the-scanner-plane.ts';
import { antennasNoOpenSky } from './no-open-sky.ts';
import { antennasPeopleInTheBeam } from './people-in-the-beam.ts';
import { antennasPeopleNearAntenna } from './people-near-antenna.ts';
import { antennasPositionAntennaNearTransmitter } from './position-antenna-near-transmitter.ts';
import { antennasScannerHasNoRoom } from './scanner-has-no-room.ts';
import { antennasScannersTooNear } from './scanners-too-near.ts';
import { antennasShadowSectors } from './shadow-sectors.ts';

/** Faults of antennas and radars. */
export const antennasFaults: readonly Fault[] = [
  antennasAntennasTooNear,
  antennasCoaxKindUnknown,
  antennasCoaxLosesTooMuch,
  antennasInTheScannerPlane,
  antennasNoOpenSky,
  antennasPeopleInTheBeam,
  antennasPeopleNearAntenna,
  antennasPositionAntennaNearTransmitter,
  antennasScannerHasNoRoom,
  antennasScannersTooNear,
  antennasShadowSectors,
];
