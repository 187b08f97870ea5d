import { layoutProblems } from './backbone/layout-problems.ts';
import type { LayoutMap } from './backbone/problem.ts';
import { indexBoat } from './boat/boat-index.ts';
import type { Boat } from './boat/boat-schema.ts';
import { canonicalBoat } from './boat/canonical-boat.ts';
import { lastPhase } from './boat/phase.ts';
import { withCures } from './cures/with-cures.ts';
import { joinsOf } from './joins/joins-of.ts';
import { planBuses } from './plan-buses.ts';
import { planLines } from './plan-lines.ts';
import type { Plan, PlanDraft } from './plan-shape.ts';
import { program } from './program.ts';
import { arrivals } from './readings/arrivals.ts';
import { beforeOf, phaseBefore, withSeenBefore } from './readings/before-and-after.ts';
import { refitOf } from './readings/refit.ts';
import { roundPlan } from './round-plan.ts';
import { rules } from './rules/index.ts';
import { runRules } from './rules/run-rules.ts';
import { orderOf } from './shopping/order-of.ts';

/**
 * Everything that follows from one boat file, in the order the job has it. Pure and synchronous: equal boats, layouts and
 * phase give equal bytes, in whatever order the file's lists and keys stand.
 *
 * `layouts`: answers by problem hash; one that is missing, or that the checker refuses, is replaced by the heuristic's.
 * `phase`: default the last. Lines and layouts are for the last phase, readings for the phase asked.
 */
export const plan = (boat: Boat, layouts: LayoutMap, phase: number = lastPhase(boat)): Plan => {
  const index = indexBoat(canonicalBoat(boat));
  const problems = layoutProblems(index.boat);
  const refit = refitOf(index, (at) => joinsOf(index, at));
  const lastJoins = joinsOf(index, lastPhase(boat));
  const buses = planBuses({ index, problems, layouts, joins: lastJoins });
  const before = beforeOf(index, { before: joinsOf(index, phaseBefore), after: lastJoins });
  const wiring = planLines({ index, buses, joins: lastJoins });
  const draft: PlanDraft = roundPlan({
    boat: boat.name,
    program,
    phase,
    ...wiring,
    ...orderOf({ index, buses, lines: wiring.lines }),
    readings: withCures({
      refit,
      phase,
      joins: joinsOf(index, phase),
      readings: withSeenBefore(arrivals(refit, phase), before),
    }),
    before,
    buses: buses.map(({ entry }) => entry),
  });
  return { ...draft, findings: runRules(rules, { index, plan: draft, reaches: refit.reachesIn(phase) }) };
};
