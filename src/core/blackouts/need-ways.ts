import type { Need } from '../boat/boat-schema.ts';
import type { Reference } from '../boat/sheet.ts';
import { derivedReadings } from '../facts/derived-readings.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import type { JoinEntry } from '../plan-shape.ts';
import type { PortNode } from '../readings/port-network.ts';
import { stepsOf } from '../readings/reach.ts';
import type { Reaches } from '../readings/reaches.ts';
import { shortfalls } from '../readings/wanted.ts';
import { waysInto } from '../readings/ways-in.ts';
import { lineBetween } from './line-between.ts';
import type { WiredBoat } from './supply-graph.ts';

/** From one unit to the next: over a bus, over a line, or over something that no cut takes. */
export type Link =
  | { readonly by: 'bus'; readonly bus: string; readonly from: string; readonly to: string }
  | { readonly by: 'line'; readonly line: string }
  | { readonly by: 'air' };

/** A reading that the source of a way works out of others, and the references that will do. */
export interface MadeAt {
  readonly kit: string;
  readonly reading: ReadingId;
  readonly references: readonly Reference[];
}

/** One way of a reading to a unit, as what must hold for it: units alive, and of each hop one link. */
export interface HoldingWay {
  readonly units: readonly string[];
  readonly hops: readonly (readonly Link[])[];
  readonly made?: MadeAt;
  /** unit that must have variation, to turn a magnetic heading into a true one */
  readonly variationAt?: string;
}

/** Everything by which readings get where they are needed, each way once. */
export interface NeedWays {
  readonly of: (need: Need) => readonly HoldingWay[];
  /** ways by which a unit has a reading at all, whatever its form */
  readonly presence: (kit: string, reading: ReadingId) => readonly HoldingWay[];
}

const keyOf = ({ units, hops, made, variationAt }: HoldingWay): string =>
  JSON.stringify([units, hops, made, variationAt]);

const unlike = (ways: readonly HoldingWay[]): HoldingWay[] => [
  ...new Map(ways.map((way) => [keyOf(way), way])).values(),
];

/** The links from one port of a way to the next; none where it stays inside a unit. */
const linksOf = (wired: WiredBoat): ((from: PortNode, to: PortNode) => readonly Link[]) => {
  const joins = new Map<string, JoinEntry>(wired.joins.map((join) => [join.id, join]));
  const lineOf = new Map<string, string | undefined>();
  const overJoin = (join: JoinEntry, from: string, to: string): Link => {
    const key = `${join.id} ${from} ${to}`;
    if (!lineOf.has(key)) lineOf.set(key, lineBetween(wired, join, [from, to]));
    const line = lineOf.get(key);
    return line === undefined ? { by: 'air' } : { by: 'line', line };
  };
  return (from, to) => {
    const inside = from.kit === to.kit && (from.group.includes(to) || from.turnsFrom.some((turn) => turn.to === to));
    if (inside) return [];
    return from.memberships
      .filter(({ net, talks }) => talks && to.memberships.some((other) => other.net === net && other.listens))
      .map(({ net }): Link => {
        const join = joins.get(net.id);
        return join === undefined || join.bus !== undefined
          ? { by: 'bus', bus: net.id, from: from.id, to: to.id }
          : overJoin(join, from.id, to.id);
      });
  };
};

/**
 * The ways of every need and of every ingredient, from what was followed through the whole boat: a failure only takes ways
 * away, so nothing has to be followed again. Pure; worked out when first asked for.
 */
export const needWays = (wired: WiredBoat, reaches: Reaches): NeedWays => {
  const links = linksOf(wired);
  const nodes = reaches.network.nodes;
  const wayOf = (
    ports: readonly PortNode[],
    { reading, references }: { reading: ReadingId; references: readonly Reference[] },
  ): HoldingWay => {
    const [source] = ports;
    const hops = ports.flatMap((port, at) => {
      const next = ports[at + 1];
      const found = next === undefined ? [] : links(port, next);
      return found.length === 0 ? [] : [found];
    });
    return {
      units: [...new Set(ports.map(({ kit }) => kit))],
      hops,
      ...(source !== undefined && derivedReadings.has(reading)
        ? { made: { kit: source.kit, reading, references } }
        : {}),
    };
  };
  const known = new Map<string, readonly HoldingWay[]>();
  const presence: NeedWays['presence'] = (kit, reading) => {
    const key = `${kit} ${reading}`;
    const found =
      known.get(key) ??
      unlike([
        ...reaches.ownOf(kit, reading).map(({ node }) => wayOf([node], { reading, references: [] })),
        ...(reaches.of(reading).heard.get(kit) ?? []).map(({ step }) =>
          wayOf(
            stepsOf(step).map(({ node }) => node),
            { reading, references: [] },
          ),
        ),
      ]);
    known.set(key, found);
    return found;
  };
  const of: NeedWays['of'] = (need) =>
    unlike(
      waysInto(reaches, need).map((way) => {
        const ports = way.ports.flatMap((id) => nodes.get(id) ?? []);
        const own = wayOf(ports, { reading: need.reading, references: way.wanted.references });
        const withUnits = own.units.includes(need.at) ? own : { ...own, units: [...own.units, need.at] };
        const turns = shortfalls(way.signal, way.wanted, false).length > 0;
        return turns ? { ...withUnits, variationAt: need.at } : withUnits;
      }),
    );
  return { of, presence };
};
