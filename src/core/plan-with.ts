import { withReasons } from './accepted-findings.ts';
import type { LayoutMap, Problem } from './backbone/problem.ts';
import type { blackoutTable } from './blackouts/blackout-table.ts';
import { indexBoat } from './boat/boat-index.ts';
import type { Boat } from './boat/boat-schema.ts';
import { keptFor } from './boat/kept-for.ts';
import { lastPhase } from './boat/phase.ts';
import type { mendBuses } from './cures/mend-bus.ts';
import { withHints } from './cures/with-hints.ts';
import { notFitted } from './fitting/not-fitted.ts';
import type { planSettingsSheet } from './fitting/settings/plan-settings-sheet.ts';
import { withoutSheet } from './fitting/settings/without-sheet.ts';
import { reachesFor, refitWith } from './joins/joined-refit.ts';
import { asFiled } from './joins/wired-with.ts';
import { keptWithLaid, saidOfSettings, saidOfSources } from './kept-with-laid.ts';
import type { PlannedBus } from './plan-buses.ts';
import { type Laid, type LaidLateParts, planLaid } from './plan-laid.ts';
import type { planPhases } from './plan-phases.ts';
import type { Finding, Plan, PlanDraft } from './plan-shape.ts';
import { program } from './program.ts';
import type { dockSheet } from './proof/dock/dock-sheet.ts';
import { arrivals } from './readings/arrivals.ts';
import { withSeenBefore } from './readings/before-and-after.ts';
import type { planRemote } from './remote/plan-remote.ts';
import { roundPlan } from './round-plan.ts';
import type { LaidInput, RuleInput } from './rules/rule.ts';
import type { planLighting } from './screens/plan-lighting.ts';
import { withOrders } from './shopping/with-orders.ts';
import type { planSources } from './sources/plan-sources.ts';
import type { TestEntry } from './tests-shape.ts';
import type { WorkInput } from './work/plan-work.ts';
import type { PlanWork } from './work-shape.ts';

/** What takes time or much script, and what a first picture can do without. */
export interface LateParts extends LaidLateParts {
  /** proposes the joins that the file does not say */
  readonly wire: typeof asFiled;
  /** fills in what would close each gap in what arrives */
  readonly cures: typeof withHints;
  /** what would give a layout to each bus that has none */
  readonly mends: typeof mendBuses;
  /** which source counts where, and what to set in each unit for it */
  readonly sources: typeof planSources;
  /** what is typed into each unit by the boat’s own measures, and the papers that go before */
  readonly sheet: typeof planSettingsSheet;
  /** what each single failure takes away */
  readonly blackouts: typeof blackoutTable;
  /** how she stands after each phase, where there are several */
  readonly phases: typeof planPhases;
  /** who can reach what by radio and from ashore */
  readonly remote: typeof planRemote;
  /** which screens dim and fall silent together */
  readonly lighting: typeof planLighting;
  /** what is measured and tried at the dock */
  readonly tests: typeof dockSheet;
  /** what is done in which order, by whom, and what is dark meanwhile */
  readonly work: (input: WorkInput) => PlanWork | undefined;
  /** what every rule finds; `laid` is the very same from plan to plan while she lies as she does */
  readonly findings: (input: RuleInput, laid: LaidInput) => Finding[];
}

/** The late parts left out: hints in place of cures that were tried, no order, no other layout beside the one taken, nothing found. */
export const withoutLateParts: LateParts = {
  wire: asFiled,
  stray: () => ({
    compass: [],
    isolation: { hull: 'other', negatives: [], ways: [], shields: [], unknown: [] },
  }),
  fitting: notFitted,
  cures: withHints,
  power: () => ({ loads: [], loadsBefore: [], loadSums: [], feeds: [], supplies: [], drives: [], steering: [] }),
  panels: () => ({ banks: [], converters: [], panels: [], noPanel: [], mains: { chargers: [], ways: [] } }),
  energy: () => ({ energy: [], unknownDraws: [] }),
  traffic: () => ({ traffic: { waters: 'harbour', buses: [], lines: [] } }),
  order: ({ lines }) => ({ lines: [...lines], shopping: [], tape: [], passages: [] }),
  ledRound: () => [],
  choices: () => new Map(),
  mends: () => new Map(),
  sources: () => ({ sources: [], numbers: [], settings: [], pairs: [] }),
  sheet: withoutSheet,
  blackouts: () => ({ blackouts: [], vitals: [] }),
  phases: () => undefined,
  remote: () => ({ remote: [] }),
  lighting: () => ({ lighting: [] }),
  tests: () => [],
  work: () => undefined,
  findings: () => [],
};

/** Which source counts where: as it is computed with, and as a plan shows it. */
const keptSources = ({ sources }: LateParts) =>
  keptWithLaid(saidOfSources, ({ laid, joinsAt, reachesIn }: Laid, index, phase) => {
    const set = sources({
      reaches: reachesFor(index, reachesIn(phase)),
      joins: joinsAt(phase),
      lines: laid.lines,
      shields: laid.isolation.shields,
    });
    return { settings: set.settings, shown: roundPlan(set) };
  });

/** What is typed into each unit, and the papers; it rests on which source counts where. */
const keptSheet = ({ sheet }: LateParts, sourcesOf: ReturnType<typeof keptSources>) =>
  keptWithLaid(
    (boat) => ({ ...saidOfSources(boat), ...saidOfSettings(boat) }),
    (lies: Laid, index, phase) =>
      roundPlan(
        sheet({
          index,
          joins: lies.joinsAt(lastPhase(index.boat)),
          settings: sourcesOf(lies, index, phase).settings,
        }),
      ),
  );

/** Tests of a bus are reckoned anew, and kept while it lies as it does; all others repeat figures that are rounded already. */
const roundedBusTest = keptFor((test: TestEntry) => roundPlan(test));
const roundedTest = (test: TestEntry): TestEntry => (test.group === 'bus' ? roundedBusTest(test) : test);

/** The work is the very same from plan to plan where nothing is otherwise that it hangs on. */
const roundedWork = keptFor((work: PlanWork) => roundPlan(work));

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
 * `laidOf`: one memory of laid boats that several such plans share.
 * `phase`: default the last. Lines and layouts are for the last phase, readings for the phase asked.
 * `pictures`: hashes of those that lie beside the boat file, where somebody looked; a plan without says nothing of them.
 */
export const planWith = (given: LateParts, laidOf = planLaid(given)) => {
  const { wire, cures, mends, blackouts, phases, remote, lighting, tests, work, findings } = given;
  const sourcesOf = keptSources(given);
  const sheetOf = keptSheet(given, sourcesOf);
  return (boat: Boat, layouts: LayoutMap, phase: number = lastPhase(boat), pictures?: ReadonlySet<string>): Plan => {
    const { boat: wired, proposal } = wire(boat);
    const index = indexBoat(wired);
    const lies = laidOf(index.boat, layouts);
    const { problems, joinsAt, reachesIn, buses, laid, shown, ruled } = lies;
    const { before } = shown;
    const refit = refitWith(index, reachesIn);
    const mended = mends({ refit, phase: lastPhase(boat), buses: withUnlaid(problems, buses) });
    const unlaid = unlaidOf(mended, buses);
    const entries = buses.map(({ entry }) => entry);
    const table = {
      ...blackouts({ index, ...laid, buses: entries, joinsAt }, refit.reachesIn(phase), phase),
      ...remote(refit.reachesIn(phase).network),
      ...lighting(refit.reachesIn(phase).network),
    };
    const readings = cures({
      refit,
      phase,
      joins: joinsAt(phase),
      readings: withSeenBefore(arrivals(refit, phase), before),
    });
    const steps = phases({ refit, layouts, last: { ...laid, buses: entries }, before });
    const parts: Omit<PlanDraft, 'tests'> = {
      boat: boat.name,
      program,
      phase,
      ...shown.laid,
      shopping: withOrders(shown.laid.shopping, boat.orders),
      ...(proposal === undefined ? {} : { proposal: roundPlan(proposal) }),
      readings: roundPlan(readings),
      before,
      ...sourcesOf(lies, index, phase).shown,
      ...sheetOf(lies, index, phase),
      buses: shown.buses.map((entry) => {
        const mend = mended.get(entry.id);
        return mend === undefined ? entry : { ...entry, mend: roundPlan(mend) };
      }),
      ...(unlaid.length === 0 ? {} : { unlaid: roundPlan(unlaid) }),
      ...table,
      ...(steps === undefined ? {} : { phases: roundPlan(steps) }),
    };
    const tested: PlanDraft = { ...parts, tests: tests({ index, plan: parts }).map(roundedTest) };
    const done = work({ index, plan: tested, laid: shown.laid });
    const whole: PlanDraft = done === undefined ? tested : { ...tested, work: roundedWork(done) };
    const beside = pictures === undefined ? {} : { pictures };
    const found = findings({ index, plan: whole, reaches: refit.reachesIn(phase), ...beside }, ruled(phase));
    return { ...whole, findings: withReasons(found, boat.accepted) };
  };
};
