import { busLines } from './backbone/bus-lines.ts';
import type { BoatIndex } from './boat/boat-index.ts';
import { byCodeUnit } from './boat/ids.ts';
import type { PlannedBus } from './plan-buses.ts';
import type { JoinEntry, PlanDraft, StandingJoin } from './plan-shape.ts';
import { feedLines } from './ways/feed-lines.ts';
import { joinLines } from './ways/join-lines.ts';
import { makeRouter } from './ways/routes.ts';

/** Every line of the boat in its last phase: buses, other joins, feeds; what has no route; and which lines each join runs on. */
export const planLines = ({
  index,
  buses,
  joins,
}: {
  index: BoatIndex;
  buses: readonly PlannedBus[];
  joins: readonly StandingJoin[];
}): Pick<PlanDraft, 'lines' | 'gaps'> & { joins: JoinEntry[] } => {
  const router = makeRouter(index);
  const ofBuses = buses.map(({ problem, layout }) => ({
    bus: problem.bus,
    ...busLines({ index, router, problem, layout }),
  }));
  const ofJoins = joinLines({ index, router, joins });
  const ofFeeds = feedLines({ index, router });
  const parts = [...ofBuses, ofJoins, ofFeeds];
  const busOf = new Map(ofBuses.map((part) => [part.bus, part.lines.map((line) => line.id)]));
  const linesOf = (join: StandingJoin): readonly string[] =>
    (join.bus === undefined ? ofJoins.linesOf.get(join.id) : busOf.get(join.bus)) ?? [];
  return {
    lines: parts.flatMap((part) => part.lines).sort((a, b) => byCodeUnit(a.id, b.id)),
    gaps: parts
      .flatMap((part) => part.gaps.map((gap) => ({ ...gap, serves: [...gap.serves] })))
      .sort((a, b) => byCodeUnit(a.kind, b.kind) || byCodeUnit(a.from, b.from) || byCodeUnit(a.to, b.to)),
    joins: joins.map((join) => ({ ...join, lines: [...linesOf(join)].sort(byCodeUnit) })),
  };
};
