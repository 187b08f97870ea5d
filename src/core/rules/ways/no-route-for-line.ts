import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Rule } from '../rule.ts';

/** The place an end of a line is at: a unit's, a panel's or a bank's; a bus end has none of its own. */
const placeOf = (index: BoatIndex, end: string): string | undefined => {
  const id = end.split('.')[0] ?? end;
  return (index.kit.get(id) ?? index.panels.get(id) ?? index.banks.get(id))?.place;
};

const nameOf = (index: BoatIndex, end: string): string => {
  const id = end.split(/[./]/)[0] ?? end;
  return index.kit.get(id)?.name ?? index.buses.get(id)?.name ?? id;
};

/** A cable that is wanted but cannot be led: every chain of ways between its ends has one that does not take it. */
export const noRouteForLine: Rule = {
  id: 'ways/no-route-for-line',
  level: 'fault',
  title: 'A cable is wanted that no chain of ways can take.',
  sources: ['geometry'],
  check: ({ index, plan }) => {
    const reached = new Set(index.boat.ways.flatMap((way) => way.ends));
    return plan.gaps
      .filter(({ from, to }) =>
        // an end that no way at all leads to is another rule's to tell
        [from, to].every((end) => reached.has(placeOf(index, end) ?? '') || placeOf(index, end) === undefined),
      )
      .map(({ kind, from, to, serves }) => ({
        about: serves,
        apart: [kind, from, to],
        says: `No way is found for the ${kind.replace('-', ' ')} cable from ${nameOf(index, from)} to ${nameOf(index, to)}: every road between them has a way that does not take it.`,
        cure: 'Add a way between the two, or allow this kind of cable on one that is there.',
      }));
  },
};
