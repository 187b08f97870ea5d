import type { BoatIndex } from '../../boat/boat-index.ts';
import { limitValue } from '../../boat/limit-value.ts';
import { readingsOf } from '../../facts/message-readings.ts';
import { nmea0183 } from '../../facts/nmea0183.ts';
import type { StandingJoin } from '../../plan-shape.ts';
import { type Hop, hopsOf, roundsOf } from '../hops.ts';
import { lineLoad } from '../line-load.ts';
import { multiplexedAt } from '../multiplexed.ts';

/** Joins that would stand, each with the candidate it is; none where it stands anyway. */
export interface JoinWithCandidate {
  readonly join: StandingJoin;
  readonly candidate: number | undefined;
}

/** Candidates among some joins, sorted; nothing where the joins stand anyway and no choice can mend it. */
const candidatesOf = (by: readonly string[], all: readonly JoinWithCandidate[]): readonly number[] =>
  [
    ...new Set(
      all.flatMap(({ join, candidate }) => (candidate !== undefined && by.includes(join.id) ? candidate : [])),
    ),
  ].sort((a, b) => a - b);

/** What the talkers of a net say, where that is a pair; of a bus anything may be said. */
const isSaidOn = (index: BoatIndex, all: readonly JoinWithCandidate[], net: string) => {
  if (index.buses.has(net)) return () => true;
  const talkers = all.flatMap(({ join }) =>
    join.bus === undefined && join.id === net ? join.members.filter(({ as }) => as !== 'listen') : [],
  );
  const said = new Set(
    talkers.flatMap(({ kit, port }) => {
      const found = index.sheetOf.get(kit)?.ports.find(({ id }) => id === port);
      return (found?.sends ?? []).flatMap((sent) => readingsOf(sent).map(({ reading }) => reading));
    }),
  );
  return (reading: Parameters<typeof said.has>[0]) => said.has(reading);
};

/** Two units that carry one reading from the same net onto the same bus: everybody there hears it twice. */
const doubledBy = (index: BoatIndex, all: readonly JoinWithCandidate[], hops: readonly Hop[]): Hop[][] =>
  hops.flatMap((one, at) =>
    hops.slice(at + 1).flatMap((other) => {
      if (one.kit === other.kit || one.from !== other.from || one.to !== other.to || !index.buses.has(one.to))
        return [];
      const isSaid = isSaidOn(index, all, one.from);
      return [...one.carries].some((reading) => other.carries.has(reading) && isSaid(reading)) ? [[one, other]] : [];
    }),
  );

/** Joins whose sentences a multiplexer's output cannot carry together. */
const overflowing = (index: BoatIndex, joins: readonly StandingJoin[]): string[][] => {
  const most = limitValue(index.boat, 'nmea0183-load');
  return joins.flatMap((out) =>
    out.members
      .filter(({ as }) => as === 'talk' && out.kind === 'nmea0183')
      .flatMap(({ kit, port }) => {
        const given = multiplexedAt(index, joins, { kit, port });
        if (given === undefined) return [];
        const baud = index.sheetOf.get(kit)?.ports.find(({ id }) => id === port)?.baud ?? nmea0183.baud.value;
        const isOver = (charsPerS: number): boolean => lineLoad({ charsPerS, baud }).sharePct > most;
        if (!isOver(given.charsPerS)) return [];
        const fewest = [...given.joins].sort((a, b) => b.charsPerS - a.charsPerS);
        let sum = 0;
        const enough = fewest.filter(({ charsPerS }) => {
          const isNeeded = !isOver(sum);
          if (isNeeded) sum += charsPerS;
          return isNeeded;
        });
        return [[out.id, ...enough.map(({ id }) => id)]];
      }),
  );
};

/**
 * Candidates that may not all be chosen: because a reading would go round for ever, come onto a bus twice, or a multiplexer
 * would be given more than its output carries. `all`: the joins that would stand.
 */
export const clashesOf = (index: BoatIndex, all: readonly JoinWithCandidate[]): (readonly number[])[] => {
  const joins = all.map(({ join }) => join);
  const hops = hopsOf(index, joins);
  const sets = [
    ...roundsOf(hops).map((round) => round.flatMap(({ by }) => by)),
    ...doubledBy(index, all, hops).map((two) => two.flatMap(({ by }) => by)),
    ...overflowing(index, joins),
  ];
  const found = new Map<string, readonly number[]>();
  for (const by of sets) {
    const candidates = candidatesOf(by, all);
    if (candidates.length > 0) found.set(candidates.join(' '), candidates);
  }
  return [...found.values()];
};
