import type { BoatIndex } from '../boat/boat-index.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import type { StandingJoin } from '../plan-shape.ts';

/** Something that carries readings from one net to another: a converter, a multiplexer, a bridge. */
export interface Hop {
  readonly kit: string;
  /** a net is a bus, or a join that is none */
  readonly from: string;
  readonly to: string;
  readonly carries: ReadonlySet<ReadingId>;
  /** joins by which the unit is on the two nets */
  readonly by: readonly string[];
}

/** Every hop that joins make possible: in at a port that listens on one net, out at a port that talks on another. */
export const hopsOf = (index: BoatIndex, joins: readonly Pick<StandingJoin, 'id' | 'bus' | 'members'>[]): Hop[] => {
  const at = new Map<string, { readonly join: string; readonly net: string; readonly as: string }[]>();
  for (const { id, bus, members } of joins)
    for (const { kit, port, as } of members) {
      const key = `${kit}.${port}`;
      at.set(key, [...(at.get(key) ?? []), { join: id, net: bus ?? id, as }]);
    }
  return index.boat.kit.flatMap(({ id: kit }) =>
    (index.sheetOf.get(kit)?.turns ?? []).flatMap(({ fromPort, toPort, carries }) =>
      (at.get(`${kit}.${fromPort}`) ?? [])
        .filter(({ as }) => as !== 'talk')
        .flatMap((into) =>
          (at.get(`${kit}.${toPort}`) ?? [])
            .filter(({ as, net }) => as !== 'listen' && net !== into.net)
            .map((out) => ({
              kit,
              from: into.net,
              to: out.net,
              carries: new Set(carries.map(({ reading }) => reading)),
              by: [into.join, out.join],
            })),
        ),
    ),
  );
};

/**
 * Rounds in which a reading would go for ever: hops from net to net by different units, each carrying it, that come back to
 * the first. Two paths in opposite directions by one unit are none, for a unit does not send back what came in there. Each
 * round as its hops, the shortest that begins at each hop.
 */
export const roundsOf = (hops: readonly Hop[]): Hop[][] => {
  const from = new Map<string, Hop[]>();
  for (const hop of hops) from.set(hop.from, [...(from.get(hop.from) ?? []), hop]);
  const rounds: Hop[][] = [];
  for (const first of hops)
    for (const reading of first.carries) {
      const round = shortestBack(from, first, reading);
      if (round !== undefined) rounds.push(round);
    }
  return rounds;
};

const shortestBack = (from: ReadonlyMap<string, readonly Hop[]>, first: Hop, reading: ReadingId): Hop[] | undefined => {
  const queue: Hop[][] = [[first]];
  const seen = new Set([first.to]);
  for (let path = queue.shift(); path !== undefined; path = queue.shift()) {
    const last = path.at(-1) ?? first;
    for (const hop of from.get(last.to) ?? []) {
      if (!hop.carries.has(reading) || path.some(({ kit }) => kit === hop.kit)) continue;
      if (hop.to === first.from) return [...path, hop];
      if (seen.has(hop.to)) continue;
      seen.add(hop.to);
      queue.push([...path, hop]);
    }
  }
  return undefined;
};
