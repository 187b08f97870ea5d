import { askingFigures } from '../../facts/listening-figures.ts';
import { byStrengthOfName, readName } from '../decode/name-field.ts';
import { pgnOfCanId, sourceOfCanId, splitCanId } from '../readers/can-id.ts';
import { addressClaim, claimFrame, everyone, isoRequest, nullAddress, type SentFrame } from './sent-frame.ts';

/** What is needed of a frame that was heard. */
export interface HeardFrame {
  readonly id: number;
  readonly length: number;
  readonly data: Uint8Array;
}

/** Holds an address of the bus for as long as nobody stronger wants it (source: iso-11783-5). */
export interface AddressClaimer {
  /** Takes what is heard; gives what must be sent at once: a claim defended, a claim of another address. */
  take(frame: HeardFrame, nowMs: number): readonly SentFrame[];
  /** Claims a free address for the first time. */
  begin(nowMs: number): readonly SentFrame[];
  /** The address, once nobody opposed the claim for long enough. */
  held(nowMs: number): number | undefined;
  /** No address is free, or each was taken away: nothing may be sent any more. */
  isBeaten(): boolean;
}

const unopposedMs = askingFigures.unopposedMs.value;
/** Addresses a device may hold are 0 to 251; taken from the top, where fewest units sit (project choice). */
const highestAddress = 251;
/** A bus on which so many claims are lost is no place to ask (project choice). */
const mostClaims = 5;

/** Whether a request asks us for our claim. */
const asksForClaim = ({ id, length, data }: HeardFrame, own: number): boolean => {
  const { pgn, destination } = splitCanId(id);
  if (pgn !== isoRequest || length < 3 || (destination !== everyone && destination !== own)) return false;
  return ((data[0] ?? 0) | ((data[1] ?? 0) << 8) | ((data[2] ?? 0) << 16)) === addressClaim;
};

/** Starts without an address; whoever is heard meanwhile keeps its own. */
export const startAddressClaimer = (name: string): AddressClaimer => {
  const taken = new Set<number>();
  let own: number | undefined;
  let sinceMs = 0;
  let claims = 0;
  let isBeaten = false;

  const claim = (nowMs: number): readonly SentFrame[] => {
    own = undefined;
    for (let address = highestAddress; address >= 0 && own === undefined; address -= 1) {
      if (!taken.has(address)) own = address;
    }
    claims += 1;
    if (own === undefined || claims > mostClaims) {
      own = undefined;
      isBeaten = true;
      return [claimFrame({ name, from: nullAddress, says: 'cannot claim an address: gives up' })];
    }
    sinceMs = nowMs;
    return [claimFrame({ name, from: own, says: `claims address ${own}` })];
  };

  /** Somebody else claims the address we hold: the lower NAME keeps it. */
  const contested = (other: string, nowMs: number): readonly SentFrame[] => {
    if (own === undefined || other === name) return [];
    if (byStrengthOfName(name, other) > 0) return claim(nowMs);
    return [claimFrame({ name, from: own, says: `keeps address ${own}, which a weaker NAME claims` })];
  };

  return {
    begin: claim,
    take(frame, nowMs) {
      const source = sourceOfCanId(frame.id);
      const other =
        pgnOfCanId(frame.id) === addressClaim ? readName(frame.data.subarray(0, frame.length))?.hex : undefined;
      // our own frames come back from the bus
      if (other === name) return [];
      if (source !== own || other !== undefined) taken.add(source);
      if (source === own && other !== undefined) {
        const answer = contested(other, nowMs);
        if (own === source) taken.delete(source);
        return answer;
      }
      if (own === undefined || !asksForClaim(frame, own)) return [];
      return [claimFrame({ name, from: own, says: `answers who holds address ${own}` })];
    },
    held: (nowMs) => (own !== undefined && nowMs - sinceMs >= unopposedMs ? own : undefined),
    isBeaten: () => isBeaten,
  };
};
