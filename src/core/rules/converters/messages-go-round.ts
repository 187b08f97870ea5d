import type { BoatIndex } from '../../boat/boat-index.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import { readingWords } from '../../facts/reading-words.ts';
import type { StandingJoin } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { busName, unitName } from '../rule-words.ts';

interface Hop {
  readonly kit: string;
  readonly from: string;
  readonly to: string;
  readonly carries: ReadonlySet<ReadingId>;
}

/** What each unit carries from one network to another: from the bus to a pair, from a pair to the bus. */
const hopsOf = (index: BoatIndex, joins: readonly StandingJoin[]): Hop[] => {
  const netsAt = new Map<string, string[]>();
  for (const join of joins) {
    for (const { kit, port } of join.members) {
      const key = `${kit}.${port}`;
      netsAt.set(key, [...(netsAt.get(key) ?? []), join.bus ?? join.id]);
    }
  }
  return index.boat.kit.flatMap(({ id }) =>
    (index.sheetOf.get(id)?.turns ?? []).flatMap(({ fromPort, toPort, carries }) =>
      (netsAt.get(`${id}.${fromPort}`) ?? []).flatMap((from) =>
        (netsAt.get(`${id}.${toPort}`) ?? []).map((to) => ({
          kit: id,
          from,
          to,
          carries: new Set(carries.map(({ reading }) => reading)),
        })),
      ),
    ),
  );
};

/** Two units that carry one reading out of a bus and back into it: it goes round for ever, older each time. */
export const messagesGoRound: Rule = {
  id: 'converters/messages-go-round',
  level: 'fault',
  title: 'Two converters carry a reading out of a bus and back into it.',
  sources: ['messages-conflicts'],
  check: ({ index, plan }) => {
    const hops = hopsOf(index, plan.joins);
    const out = hops.filter(({ from, to }) => index.buses.has(from) && from !== to);
    return out.flatMap((away) =>
      hops
        .filter(({ kit, from, to }) => kit !== away.kit && from === away.to && to === away.from)
        .flatMap((back) => {
          const round = [...away.carries].filter((reading) => back.carries.has(reading));
          if (round.length === 0) return [];
          return [
            {
              about: [away.from, away.kit, back.kit],
              says: `${unitName(index, away.kit)} carries ${round.map((reading) => readingWords[reading]).join(', ')} out of ${busName(index, away.from)}, and ${unitName(index, back.kit)} carries it back in. It goes round for ever, and everybody hears it twice.`,
              cure: 'Leave one path in each direction: switch these readings off in one of the two.',
            },
          ];
        }),
    );
  },
};
