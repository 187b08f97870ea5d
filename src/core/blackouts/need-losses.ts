import type { Loss } from '../blackouts-shape.ts';
import type { Need } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { remember } from '../boat/remember.ts';
import type { Reaches } from '../readings/reaches.ts';
import { askedBy } from '../readings/ways-in.ts';
import type { Effect } from './effect.ts';
import { holdsIn } from './losses.ts';
import { type HoldingWay, type NeedWays, needWays } from './need-ways.ts';
import type { WiredBoat } from './supply-graph.ts';

/** A need that is met while nothing fails, with its ways. */
export interface HeldNeed {
  readonly need: Need;
  readonly ways: readonly HoldingWay[];
  /** units, and lines and buses, of all its ways together */
  readonly units: ReadonlySet<string>;
  readonly links: ReadonlySet<string>;
  /** some way hangs on other readings */
  readonly conditional: boolean;
}

const heldNeed = (need: Need, ways: readonly HoldingWay[]): HeldNeed => ({
  need,
  ways,
  units: new Set(ways.flatMap(({ units }) => units)),
  links: new Set(
    ways.flatMap(({ hops }) =>
      hops.flat().flatMap((link) => (link.by === 'bus' ? [link.bus] : link.by === 'line' ? [link.line] : [])),
    ),
  ),
  conditional: ways.some(({ made, variationAt }) => made !== undefined || variationAt !== undefined),
});

/** Whether a failure touches anything that a need hangs on. */
const touches = ({ dark, cut, buses }: Effect, { units, links, conditional }: HeldNeed): boolean => {
  if (conditional) return true;
  for (const kit of dark) if (units.has(kit)) return true;
  for (const line of cut) if (links.has(line)) return true;
  for (const bus of buses.keys()) if (links.has(bus)) return true;
  return false;
};

/** Tells of one need after another what an effect takes of it. */
const lossIn = (effect: Effect, ways: NeedWays): ((held: HeldNeed) => Loss | undefined) => {
  if (effect.dark.size === 0 && effect.cut.size === 0 && effect.buses.size === 0) return () => undefined;
  const hasDoubt = [...effect.buses.values()].some(({ doubtful }) => doubtful);
  const holds = holdsIn(ways, effect, false);
  const mayHold = hasDoubt ? holdsIn(ways, effect, true) : holds;
  return (held) => {
    if (!touches(effect, held) || held.ways.some(holds)) return undefined;
    const { reading, instance, at } = held.need;
    const named = { reading, ...(instance === undefined ? {} : { instance }), at };
    return hasDoubt && held.ways.some(mayHold) ? { ...named, perhaps: true } : named;
  };
};

const needOrder = ({ reading, instance, at }: Need): string => `${reading} ${instance ?? -1} ${at}`;

/** The needs at units of a network, each once, sorted. */
const needsIn = (needs: readonly Need[], { network: { nodesOf } }: Reaches): Need[] =>
  [...new Map(needs.map((need) => [needOrder(need), need]))]
    .sort(([a], [b]) => byCodeUnit(a, b))
    .flatMap(([, need]) => (nodesOf.has(need.at) ? [need] : []));

/**
 * Of each need what it hangs on and what each effect takes of it, found when first asked for: a need that an edit leaves alone
 * loses what it lost.
 */
export const needLosses = (wired: WiredBoat, effects: readonly Effect[], reaches: Reaches) => {
  const ways = needWays(wired, reaches);
  const lossIns = effects.map((effect) => lossIn(effect, ways));
  const of = remember({
    most: 2000,
    keyOf: askedBy,
    find: (need) => {
      const held = heldNeed(need, ways.of(need));
      const losses = lossIns.flatMap((lossOf, effect) => {
        const loss = held.ways.length === 0 ? undefined : lossOf(held);
        return loss === undefined ? [] : [{ effect, loss }];
      });
      return { ...held, losses };
    },
  });
  return {
    ways,
    /** the needs that are met, each once, sorted; and what each effect takes of them, in the order of the effects */
    lossesOf: (needs: readonly Need[]) => {
      const held = needsIn(needs, reaches)
        .map(of)
        .filter(({ ways: own }) => own.length > 0);
      const losses = effects.map((): Loss[] => []);
      for (const one of held) for (const { effect, loss } of one.losses) losses[effect]?.push(loss);
      return { held, losses };
    },
  };
};
