import { layoutProblems } from './backbone/layout-problems.ts';
import type { LayoutMap, Problem } from './backbone/problem.ts';
import { indexBoat } from './boat/boat-index.ts';
import type { Boat } from './boat/boat-schema.ts';
import { canonicalBoat } from './boat/canonical-boat.ts';
import { lastPhase } from './boat/phase.ts';
import type { mendBuses } from './cures/mend-bus.ts';
import { withHints } from './cures/with-hints.ts';
import { joinsOf } from './joins/joins-of.ts';
import { type PlannedBus, planBuses } from './plan-buses.ts';
import type { planEnergy } from './plan-energy.ts';
import type { planPanels } from './plan-panels.ts';
import type { planPower } from './plan-power.ts';
import { passagesTogether, planRound } from './plan-round.ts';
import type { Finding, Plan, PlanDraft } from './plan-shape.ts';
import { program } from './program.ts';
import { arrivals } from './readings/arrivals.ts';
import { beforeOf, withSeenBefore } from './readings/before-and-after.ts';
import { refitOf } from './readings/refit.ts';
import { roundPlan } from './round-plan.ts';
import type { RuleInput } from './rules/rule.ts';
import type { busChoices } from './shopping/bus-choices.ts';
import type { ledRound, orderOf } from './shopping/order-of.ts';

/** What takes time or much script, and what a first picture can do without. */
export interface LateParts {
  /** fills in what would close each gap in what arrives */
  readonly cures: typeof withHints;
  /** direct current: loads, feeds, volts */
  readonly power: typeof planPower;
  /** the source side: banks, converters, panels */
  readonly panels: typeof planPanels;
  /** what a day takes out of the banks */
  readonly energy: typeof planEnergy;
  /** the order: pieces, parts, and what to tape before it */
  readonly order: typeof orderOf;
  /** which lines are led another way, because their plug does not pass where they would go */
  readonly ledRound: typeof ledRound;
  /** what else could have been done on each bus */
  readonly choices: typeof busChoices;
  /** what would give a layout to each bus that has none */
  readonly mends: typeof mendBuses;
  /** what every rule finds */
  readonly findings: (input: RuleInput) => Finding[];
}

/** The late parts left out: hints in place of cures that were tried, no order, no other layout beside the one taken, nothing found. */
export const withoutLateParts: LateParts = {
  cures: withHints,
  power: () => ({ loads: [], loadsBefore: [], loadSums: [], feeds: [], supplies: [], drives: [], steering: [] }),
  panels: () => ({ banks: [], converters: [], panels: [], noPanel: [], mains: { chargers: [], ways: [] } }),
  energy: () => ({ energy: [], unknownDraws: [] }),
  order: ({ lines }) => ({ lines: [...lines], shopping: [], tape: [], passages: [] }),
  ledRound: () => [],
  choices: () => new Map(),
  mends: () => new Map(),
  findings: () => [],
};

/** Every bus as planned, those without a layout too. */
const withUnlaid = (problems: readonly Problem[], buses: readonly PlannedBus[]) =>
  problems.map((problem) => buses.find((bus) => bus.problem === problem) ?? { problem });

const unlaidOf = (mended: ReturnType<typeof mendBuses>, buses: readonly PlannedBus[]): NonNullable<Plan['unlaid']> =>
  [...mended].flatMap(([id, mend]) => (buses.some(({ entry }) => entry.id === id) ? [] : [{ id, mend }]));

/**
 * Everything that follows from one boat file, in the order the job has it, with the late parts given. Pure and
 * synchronous: equal boats, layouts and phase give equal bytes, in whatever order the file's lists and keys stand.
 *
 * `layouts`: answers by problem hash; one that is missing, or that the checker refuses, is replaced by the heuristic's.
 * `phase`: default the last. Lines and layouts are for the last phase, readings for the phase asked.
 */
export const planWith =
  ({ cures, power, panels, energy, order, ledRound, choices, mends, findings }: LateParts) =>
  (boat: Boat, layouts: LayoutMap, phase: number = lastPhase(boat)): Plan => {
    const index = indexBoat(canonicalBoat(boat));
    const problems = layoutProblems(index.boat);
    const refit = refitOf(index, (at) => joinsOf(index, at));
    const lastJoins = joinsOf(index, lastPhase(boat));
    const buses = planBuses({ index, problems, layouts, joins: lastJoins });
    const before = beforeOf(refit);
    const { wiring, passages: round } = planRound({ index, buses, joins: lastJoins }, ledRound);
    const ordered = order({ index, buses, lines: wiring.lines, ways: wiring.ways });
    const chosen = choices({ index, buses });
    const mended = mends({ refit, phase: lastPhase(boat), buses: withUnlaid(problems, buses) });
    const unlaid = unlaidOf(mended, buses);
    const joinsAt = (at: number) => joinsOf(index, at);
    const draft: PlanDraft = roundPlan({
      boat: boat.name,
      program,
      phase,
      ...wiring,
      ...power({ index, joinsAt, lines: wiring.lines, buses }),
      ...panels({ index, joinsAt }),
      ...energy({ index, joinsAt }),
      ...ordered,
      passages: passagesTogether(round, ordered.passages),
      readings: cures({
        refit,
        phase,
        joins: joinsOf(index, phase),
        readings: withSeenBefore(arrivals(refit, phase), before),
      }),
      before,
      buses: buses.map(({ entry }) => {
        const mend = mended.get(entry.id);
        return { ...entry, ...chosen.get(entry.id), ...(mend === undefined ? {} : { mend }) };
      }),
      ...(unlaid.length === 0 ? {} : { unlaid }),
    });
    return { ...draft, findings: findings({ index, plan: draft, reaches: refit.reachesIn(phase) }) };
  };
