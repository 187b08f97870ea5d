import { busLines } from './backbone/bus-lines.ts';
import type { BoatIndex } from './boat/boat-index.ts';
import { byCodeUnit } from './boat/ids.ts';
import { nextLabels } from './boat/next-labels.ts';
import { lineWires } from './joins/line-wires.ts';
import { networkEntries } from './joins/network-entries.ts';
import type { PlannedBus } from './plan-buses.ts';
import type { JoinEntry, LineEntry, PlanDraft, StandingJoin } from './plan-shape.ts';
import { dripLoops } from './ways/drip-loops.ts';
import { feedLines } from './ways/feed-lines.ts';
import { joinLines } from './ways/join-lines.ts';
import { mastRuns } from './ways/mast-runs.ts';
import { withPinnedRoutes } from './ways/pinned-routes.ts';
import { makeRouter } from './ways/routes.ts';
import { routerWith, shareWays } from './ways/share-ways.ts';
import { wayFills } from './ways/way-fills.ts';

/** A new line with the places where water must drop off it; one that lies aboard has its own. */
const withDripLoops = (index: BoatIndex, line: LineEntry): LineEntry => {
  const loops = line.kept === undefined ? dripLoops(index, line) : [];
  return loops.length === 0 ? line : { ...line, dripLoops: loops };
};

/** Lines with the labels that are handed out to them next, where they have none. */
const withNextLabels = ({ boat }: BoatIndex, lines: readonly LineEntry[]): LineEntry[] => {
  const next = nextLabels(
    boat.labels ?? {},
    lines.map(({ id }) => id),
  );
  return lines.map((line) => {
    const label = next[line.id];
    return label === undefined ? line : { ...line, nextLabel: label };
  });
};

/**
 * Every line of the boat in its last phase: buses, other joins, feeds; what has no route; which lines each join runs on; and
 * what then lies in each way.
 */
export const planLines = ({
  index,
  buses,
  joins,
  round = new Map(),
}: {
  index: BoatIndex;
  buses: readonly PlannedBus[];
  joins: readonly StandingJoin[];
  /** routes, by line, of those that are led another way than the cheapest */
  round?: ReadonlyMap<string, readonly string[]>;
}): Pick<PlanDraft, 'lines' | 'gaps' | 'ways' | 'masts' | 'networks'> & { joins: JoinEntry[] } => {
  const router = routerWith(withPinnedRoutes(makeRouter(index), index.boat), round);
  const grades = buses.map(({ entry }) => entry);
  const ofBuses = buses.map(({ problem, layout }) => ({
    bus: problem.bus,
    ...busLines({ index, router, problem, layout }),
  }));
  const alone = { ofJoins: joinLines({ index, router, joins }), ofFeeds: feedLines({ index, router }) };
  const linesOfAll = ({ ofJoins, ofFeeds }: typeof alone): LineEntry[] =>
    [...ofBuses, ofJoins, ofFeeds].flatMap((part) => part.lines).sort((a, b) => byCodeUnit(a.id, b.id));
  const agreed = shareWays({ index, lines: linesOfAll(alone), buses: grades, settled: round });
  const shared = routerWith(router, agreed);
  const { ofJoins, ofFeeds } =
    agreed.size === 0
      ? alone
      : { ofJoins: joinLines({ index, router: shared, joins }), ofFeeds: feedLines({ index, router: shared }) };
  const busOf = new Map(ofBuses.map((part) => [part.bus, part.lines.map((line) => line.id)]));
  const withWires = (line: LineEntry): LineEntry => {
    const on = joins.filter(({ id }) => ofJoins.linesOf.get(id)?.includes(line.id) === true);
    const wires = lineWires(index, on, [line.from, line.to]);
    return wires.length === 0 ? line : { ...line, wires };
  };
  const linesOf = (join: StandingJoin): readonly string[] =>
    (join.bus === undefined ? ofJoins.linesOf.get(join.id) : busOf.get(join.bus)) ?? [];
  const lines = linesOfAll({ ofJoins, ofFeeds });
  return {
    lines: withNextLabels(index, lines).map((line) => withDripLoops(index, withWires(line))),
    ways: wayFills({ index, lines, buses: grades }),
    masts: mastRuns({ index, lines, buses: grades }),
    networks: networkEntries({ index, router, joins }),
    gaps: [...ofBuses, ofJoins, ofFeeds]
      .flatMap((part) => part.gaps.map((gap) => ({ ...gap, serves: [...gap.serves] })))
      .sort((a, b) => byCodeUnit(a.kind, b.kind) || byCodeUnit(a.from, b.from) || byCodeUnit(a.to, b.to)),
    joins: joins.map((join) => ({ ...join, lines: [...linesOf(join)].sort(byCodeUnit) })),
  };
};
