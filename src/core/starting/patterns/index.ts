import type { BoatPattern } from '../pattern.ts';
import { catamaran } from './catamaran.ts';
import { riverCruiser, steelWorkboat, trawler } from './displacement.ts';
import { ketch } from './ketch.ts';
import { openBoat, rigidInflatable } from './open-boats.ts';
import { pilothouseMotorboat } from './pilothouse-motorboat.ts';
import { sloopDeckStepped, sloopKeelStepped } from './sloop.ts';
import { sportCruiser } from './sport-cruiser.ts';

/** Every hull pattern that gives a boat, in the order they are offered. */
export const boatPatterns: readonly BoatPattern[] = [
  sloopDeckStepped,
  sloopKeelStepped,
  ketch,
  catamaran,
  pilothouseMotorboat,
  trawler,
  sportCruiser,
  openBoat,
  rigidInflatable,
  riverCruiser,
  steelWorkboat,
];
