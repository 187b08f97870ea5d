import { byCodeUnit } from '../boat/ids.ts';

/** A line before holes its plug does not pass. Costs in hundredths of the currency; absent where it cannot be done. */
export interface StuckLine {
  readonly id: string;
  /** the ways it does not pass */
  readonly ways: readonly string[];
  readonly fitPlug?: number;
  readonly otherWay?: number;
}

/** What is done for a line. */
export type PassageDoes = 'fit-plug' | 'other-way' | 'wider-hole';

/** Most holes of lines that hang together which are tried in every combination; a boat has one or two. */
const holesTried = 10;

interface Answer {
  readonly cost: number;
  readonly does: ReadonlyMap<string, PassageDoes>;
}

/** Lines that share a way, directly or through others, together; each group sorted by line. */
const groupsOf = (lines: readonly StuckLine[]): readonly (readonly StuckLine[])[] => {
  const groups: StuckLine[][] = [];
  for (const line of [...lines].sort((one, other) => byCodeUnit(one.id, other.id))) {
    const ways = new Set(line.ways);
    const touched = groups.filter((group) => group.some((other) => other.ways.some((way) => ways.has(way))));
    const merged = [...touched.flat(), line].sort((one, other) => byCodeUnit(one.id, other.id));
    groups.splice(0, groups.length, ...groups.filter((group) => !touched.includes(group)), merged);
  }
  return groups;
};

const forLine = ({ ways, fitPlug, otherWay }: StuckLine, wide: ReadonlySet<string>): [PassageDoes, number] => {
  if (ways.every((way) => wide.has(way))) return ['wider-hole', 0];
  const [fit, round] = [fitPlug ?? Number.POSITIVE_INFINITY, otherWay ?? Number.POSITIVE_INFINITY];
  return round < fit ? ['other-way', round] : ['fit-plug', fit];
};

const withHoles = (
  lines: readonly StuckLine[],
  wide: ReadonlySet<string>,
  holeCosts: ReadonlyMap<string, number>,
): Answer => {
  const chosen = lines.map((line) => [line.id, ...forLine(line, wide)] as const);
  const holes = [...wide].reduce((sum, way) => sum + (holeCosts.get(way) ?? 0), 0);
  return {
    cost: chosen.reduce((sum, [, , cost]) => sum + cost, holes),
    does: new Map(chosen.map(([id, does]) => [id, does])),
  };
};

/** Of equal cost the one with the fewest holes to widen: holes are bored for good. */
const leastOf = (lines: readonly StuckLine[], holeCosts: ReadonlyMap<string, number>): Answer => {
  const holes = [...new Set(lines.flatMap(({ ways }) => ways))]
    .filter((way) => holeCosts.has(way))
    .sort(byCodeUnit)
    .slice(0, holesTried);
  let best = withHoles(lines, new Set(), holeCosts);
  let bestCount = 0;
  for (let mask = 1; mask < 2 ** holes.length; mask += 1) {
    const wide = new Set(holes.filter((_, bit) => Math.floor(mask / 2 ** bit) % 2 === 1));
    const answer = withHoles(lines, wide, holeCosts);
    if (answer.cost < best.cost || (answer.cost === best.cost && wide.size < bestCount)) {
      best = answer;
      bestCount = wide.size;
    }
  }
  return best;
};

/**
 * What is done for each line so that all of it costs least: its plug fitted behind the hole, another way, or a wider hole,
 * which is paid for once however many lines go through it. `holeCosts`: by way, absent where a hole cannot be widened. Exact
 * up to ten such holes that hang together. A line for which nothing can be done is left out.
 */
export const leastPassages = (
  lines: readonly StuckLine[],
  holeCosts: ReadonlyMap<string, number>,
): ReadonlyMap<string, PassageDoes> => {
  const solvable = lines.filter(
    ({ ways, fitPlug, otherWay }) =>
      fitPlug !== undefined || otherWay !== undefined || ways.every((way) => holeCosts.has(way)),
  );
  const answers = groupsOf(solvable).map((group) => leastOf(group, holeCosts));
  return new Map(answers.flatMap(({ cost, does }) => (Number.isFinite(cost) ? [...does] : [])));
};
