import type { BoatIndex } from '../boat/boat-index.ts';
import type { StandingJoin } from '../plan-shape.ts';
import { portNetworkOf } from './port-network.ts';
import { type Reaches, reachesOf } from './reaches.ts';

/** One boat through all phases of her refit. */
export interface Refit {
  readonly index: BoatIndex;
  /** where each reading gets to in a phase, worked out when first asked for */
  readonly reachesIn: (phase: number) => Reaches;
}

/** A boat through her refit; `joinsIn` gives the joins that stand in a phase. Pure; keep it no longer than the index. */
export const refitOf = (index: BoatIndex, joinsIn: (phase: number) => readonly StandingJoin[]): Refit => {
  const known = new Map<number, Reaches>();
  const reachesIn: Refit['reachesIn'] = (phase) => {
    const reaches = known.get(phase) ?? reachesOf(portNetworkOf(index, phase, joinsIn(phase)));
    known.set(phase, reaches);
    return reaches;
  };
  return { index, reachesIn };
};
