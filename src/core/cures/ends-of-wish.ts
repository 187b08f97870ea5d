import { distanceToScreen } from '../readings/distance-to-screen.ts';
import { isPassage } from '../readings/port-network.ts';
import { passesUnit } from '../readings/reach.ts';
import type { Wish } from './candidate.ts';
import type { CureContext } from './cure-context.ts';
import { type Socket, socketOf } from './wire.ts';

/** Ports that give a reading now, and ports from which it would get on to the unit that wants it. */
export interface Ends {
  readonly givers: readonly Socket[];
  readonly takers: readonly Socket[];
}

/** Both ends of a gap: where the reading is, and where it would have to be. */
export const endsOf = (context: CureContext, { reading, at }: Wish): Ends => {
  const { network, reaches } = context;
  const far = distanceToScreen(network, at, reading);
  const sent = reaches.of(reading).sent.filter((step) => !passesUnit(step, at));
  const givers = [...new Set(sent.map(({ node }) => node))];
  const takers = [...network.nodes.values()].filter(
    (node) => (node.hears.has(reading) || isPassage(node)) && far.into(node) < Number.POSITIVE_INFINITY,
  );
  return {
    givers: givers.map((node) => socketOf(context, node)),
    takers: takers.map((node) => socketOf(context, node)),
  };
};
