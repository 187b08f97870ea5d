import { derivedReadings } from '../facts/derived-readings.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import type { PortNetwork, PortNode } from './port-network.ts';
import { type Reach, reachOf } from './reach.ts';
import { ownSignals, type Signal } from './signal.ts';

/** Where each reading gets to, worked out when first asked for. */
export interface Reaches {
  readonly network: PortNetwork;
  readonly of: (reading: ReadingId) => Reach;
  /** what a unit says of a reading from itself, and at which port; a derived one only while its ingredients arrive */
  readonly ownOf: (kit: string, reading: ReadingId) => readonly { readonly node: PortNode; readonly signal: Signal }[];
  /** whether a reading reaches a unit, or comes from it */
  readonly has: (kit: string, reading: ReadingId) => boolean;
}

/** Follows readings through one network, each once. Pure; keep it no longer than the network it was made from. */
export const reachesOf = (network: PortNetwork): Reaches => {
  const known = new Map<ReadingId, Reach>();

  const ownOf: Reaches['ownOf'] = (kit, reading) =>
    (network.nodesOf.get(kit) ?? []).flatMap((node) =>
      ownSignals(node, reading).flatMap((own) => {
        const signal = made(node, own);
        return signal === undefined ? [] : [{ node, signal }];
      }),
    );

  const has: Reaches['has'] = (kit, reading) => of(reading).heard.has(kit) || ownOf(kit, reading).length > 0;

  const made = (node: PortNode, own: Signal): Signal | undefined => {
    const recipes = derivedReadings.get(own.reading);
    if (recipes === undefined) return own;
    const possible = recipes.filter((recipe) => recipe.from.every((reading) => has(node.kit, reading)));
    const [best] = possible;
    if (best === undefined) return undefined;
    // With the ingredients of every recipe there the unit can be set to any of them.
    return possible.length === recipes.length || best.reference === undefined
      ? own
      : { ...own, reference: best.reference };
  };

  const of: Reaches['of'] = (reading) => {
    const reach = known.get(reading) ?? reachOf(network, reading, made);
    known.set(reading, reach);
    return reach;
  };
  return { network, of, ownOf, has };
};
