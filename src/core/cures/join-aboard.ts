import { splitDotted } from '../boat/ids.ts';
import { asSentence, byCost, type Candidate, type Wish } from './candidate.ts';
import type { CureContext } from './cure-context.ts';
import { endsOf } from './ends-of-wish.ts';
import { wire } from './wire.ts';

/** A wire between what gives the reading and what would take it, both aboard already. */
export const joinAboard = (context: CureContext, wish: Wish): Candidate[] => {
  const { givers, takers } = endsOf(context, wish);
  const found = givers.flatMap((from) =>
    takers.flatMap((to) => {
      const made = wire(context, from, to);
      const between = `${splitDotted(from.id).kit} ${splitDotted(to.id).kit}`;
      return made === undefined ? [] : [{ between, cure: { ...made, says: asSentence(made.says) } }];
    }),
  );
  // any free socket of a switch is as good as the next
  const seen = new Set<string>();
  return found
    .sort((a, b) => byCost(a.cure, b.cure))
    .filter(({ between }) => !seen.has(between) && seen.add(between))
    .map(({ cure }) => cure);
};
