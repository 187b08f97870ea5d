import { pgnInfo } from '../facts/pgns.ts';
import { worstBits } from './frame-length.ts';

const bitUs = 4;
const requestBytes = 3;
const fullFrameBytes = 8;
const productInformation = 126_996;

/** Frames that come at once, and the bus time they take, ms. */
export interface Burst {
  readonly of: 'claims' | 'claims-asked' | 'product-information';
  readonly frames: number;
  readonly busMs: number;
}

const busMs = (full: number, requests = 0): number =>
  ((full * worstBits(fullFrameBytes) + requests * worstBits(requestBytes)) * bitUs) / 1000;

/**
 * What `units` on one bus say at once: each its claim of an address, when switched on; n + n · n claims and n questions where
 * each also asks all others for theirs; n answers of 20 frames where all are asked what they are. Frames at their longest.
 * Sources: davis-2007, pgn-database, computed-claims.
 *
 * @example bursts(40).at(-1) // { of: 'product-information', frames: 800, busMs: 512 }
 */
export const bursts = (units: number): readonly Burst[] => {
  if (units === 0) return [];
  const answers = units * (pgnInfo(productInformation)?.frames ?? 1);
  const claims = units + units * units;
  return [
    { of: 'claims', frames: units, busMs: busMs(units) },
    { of: 'claims-asked', frames: claims + units, busMs: busMs(claims, units) },
    { of: 'product-information', frames: answers, busMs: busMs(answers) },
  ];
};
