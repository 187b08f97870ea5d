import type { BoatIndex } from './boat/boat-index.ts';
import { byCodeUnit } from './boat/ids.ts';
import type { PlannedBus } from './plan-buses.ts';
import { planLines } from './plan-lines.ts';
import type { PassageEntry, StandingJoin } from './plan-shape.ts';
import type { ledRound } from './shopping/order-of.ts';

/** Rounds of leading lines another way: one that gives way may bring the next before a hole that is too small for its plug. */
const mostRounds = 3;

/**
 * The lines of a boat, those led another way whose plug does not pass a hole and for which that is cheapest; and for each of
 * these what else could have been done. `find` says which they are.
 */
export const planRound = (
  asked: { index: BoatIndex; buses: readonly PlannedBus[]; joins: readonly StandingJoin[] },
  find: typeof ledRound,
): { wiring: ReturnType<typeof planLines>; passages: PassageEntry[] } => {
  const round = new Map<string, readonly string[]>();
  const passages: PassageEntry[] = [];
  let wiring = planLines(asked);
  for (let rounds = 0; rounds < mostRounds; rounds += 1) {
    const found = find({ ...asked, lines: wiring.lines, ways: wiring.ways });
    if (found.length === 0) break;
    passages.push(...found);
    for (const { line, choices } of found) {
      const ways = choices[0]?.ways;
      if (ways !== undefined) round.set(line, ways);
    }
    wiring = planLines({ ...asked, round });
  }
  return { wiring, passages };
};

/** Passages of two origins as one list, by way and line. */
export const passagesTogether = (...lists: readonly (readonly PassageEntry[])[]): PassageEntry[] =>
  lists.flat().sort((one, other) => byCodeUnit(one.way, other.way) || byCodeUnit(one.line, other.line));
