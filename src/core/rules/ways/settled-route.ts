import type { BoatIndex } from '../../boat/boat-index.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { allowsLine } from '../../ways/allowed-lines.ts';
import type { Rule } from '../rule.ts';

interface Settled {
  readonly id: string;
  readonly ways: readonly string[];
}

const placeNames = (index: BoatIndex, line: LineEntry): string =>
  [line.places.at(0), line.places.at(-1)].map((id) => index.places.get(id ?? '')?.name ?? id).join(' to ');

/** What stands at the ends of a line, by its id: units, a bus, a panel. */
const endsOf = (line: string): string[] =>
  line
    .slice(line.indexOf(':') + 1)
    .split('~')
    .map((end) => end.split(/[./]/)[0] ?? end);

/** Whether a line starts or ends with the settled ways: then its tee stands elsewhere than they lead. */
const goesOn = ({ ways: taken }: LineEntry, ways: readonly string[]): boolean =>
  [taken, taken.toReversed()].some((order) =>
    [ways, ways.toReversed()].some((settled) => settled.every((way, at) => order[at] === way)),
  );

const isOfBus = ({ buses }: BoatIndex, { from, to }: LineEntry): boolean => buses.has(from) || buses.has(to);

/** What is wrong with the settled route of a line, in words; nothing where it stands. */
const wrongWith = (index: BoatIndex, { id, ways }: Settled, line: LineEntry | undefined): string | undefined => {
  if (line === undefined) return `A route is settled for ${id}, and the plan has no such line.`;
  if (line.kind === 'trunk') {
    return `A route is settled for ${id}; the trunk of a bus goes where its layout leads it.`;
  }
  if (line.pinned === undefined && isOfBus(index, line) && goesOn(line, ways)) {
    return `The route settled for ${id} does not lead to where its tee stands, so the cable goes on from there: ${placeNames(index, line)} in all.`;
  }
  if (line.pinned === undefined) {
    return `The route settled for ${id} does not lead from ${placeNames(index, line)}, so the plan leads it another way.`;
  }
  const shut = line.ways.filter((way) => {
    const own = index.ways.get(way);
    return own !== undefined && !allowsLine(own, line.kind);
  });
  return shut.length === 0
    ? undefined
    : `The route settled for ${id} takes ${shut.join(' and ')}, where no ${line.kind} is allowed.`;
};

/** A route that was settled once and that the boat has moved on from. */
export const settledRoute: Rule = {
  id: 'ways/settled-route',
  level: 'doubt',
  title: 'A settled route must fit the boat as it is now.',
  sources: ['practice-survey'],
  check: ({ index, plan }) => {
    const lines = new Map(plan.lines.map((line) => [line.id, line]));
    return Object.entries(index.boat.pins?.routes ?? {}).flatMap(([id, { ways }]) => {
      const says = wrongWith(index, { id, ways }, lines.get(id));
      const cure = 'Let the route go and settle it anew, or put right what it runs through.';
      return says === undefined || lines.get(id)?.kept !== undefined
        ? []
        : [{ about: endsOf(id), apart: [id], says, cure }];
    });
  },
};
