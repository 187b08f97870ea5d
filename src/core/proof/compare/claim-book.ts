import { readName } from '../decode/name-field.ts';
import type { HeardMessage } from '../survey/survey.ts';

/** All claims of one address by one NAME. */
export interface Claim {
  readonly address: number;
  readonly name: string;
  count: number;
  firstUs: number | undefined;
  lastUs: number | undefined;
}

/** Who claimed which address, and how often somebody asked for it. */
export interface ClaimBook {
  take(heard: HeardMessage): void;
  all(): readonly Claim[];
  /** requests for claims, to everybody or to one */
  asked(): number;
}

export const addressClaim = 60_928;
const isoRequest = 59_904;
/** More than the devices of four full buses: a damaged recording. */
const mostClaims = 1024;

/** Starts noting claims. */
export const startClaims = (): ClaimBook => {
  const claims = new Map<string, Claim>();
  let asked = 0;
  return {
    take({ record, payload, elapsedUs, address }) {
      if (record.pgn === isoRequest && payload.length >= 3) {
        const pgn = (payload[0] ?? 0) | ((payload[1] ?? 0) << 8) | ((payload[2] ?? 0) << 16);
        if (pgn === addressClaim) asked += 1;
      }
      if (record.pgn !== addressClaim) return;
      const name = readName(payload)?.hex;
      if (name === undefined) return;
      const key = `${address} ${name}`;
      const known = claims.get(key);
      if (known !== undefined) {
        known.count += 1;
        known.lastUs = elapsedUs;
      } else if (claims.size < mostClaims)
        claims.set(key, { address, name, count: 1, firstUs: elapsedUs, lastUs: elapsedUs });
    },
    all: () => [...claims.values()],
    asked: () => asked,
  };
};
