import type { LayoutMap } from './backbone/problem.ts';
import { problemsOf } from './backbone/problems-of.ts';
import type { Boat } from './boat/boat-schema.ts';
import { boatText } from './boat/boat-text.ts';
import { lastPhase } from './boat/phase.ts';
import { remember } from './boat/remember.ts';
import type { planFitting } from './fitting/plan-fitting.ts';
import { type BoatWithoutNeeds, standingBoat, withoutNeeds } from './joins/standing-boat.ts';
import { planBuses } from './plan-buses.ts';
import type { planEnergy } from './plan-energy.ts';
import type { planPanels } from './plan-panels.ts';
import type { planPower } from './plan-power.ts';
import { passagesTogether, planRound } from './plan-round.ts';
import type { LaidPlan } from './plan-shape.ts';
import type { planStray } from './plan-stray.ts';
import type { planTraffic } from './plan-traffic.ts';
import { beforeOf } from './readings/before-and-after.ts';
import type { Refit } from './readings/refit.ts';
import { roundPlan } from './round-plan.ts';
import type { LaidInput } from './rules/rule.ts';
import type { busChoices } from './shopping/bus-choices.ts';
import type { ledRound, orderOf } from './shopping/order-of.ts';

/** The late parts that hang on what is laid, not on what is needed where. */
export interface LaidLateParts {
  /** stray currents and fields: what meets the hull, what turns each compass */
  readonly stray: typeof planStray;
  /** what fits where it is to go, and works there */
  readonly fitting: typeof planFitting;
  /** direct current: loads, feeds, volts */
  readonly power: typeof planPower;
  /** the source side: banks, converters, panels */
  readonly panels: typeof planPanels;
  /** what a day takes out of the banks */
  readonly energy: typeof planEnergy;
  /** what is sent on every bus and 0183 line */
  readonly traffic: typeof planTraffic;
  /** the order: pieces, parts, and what to tape before it */
  readonly order: typeof orderOf;
  /** which lines are led another way, because their plug does not pass where they would go */
  readonly ledRound: typeof ledRound;
  /** what else could have been done on each bus */
  readonly choices: typeof busChoices;
}

/** How many boats are kept as they were laid, and with how many sets of layouts: a step back finds the one before. */
const kept = { boats: 3, layouts: 2 } as const;

/** What the rules read that look at what is laid, for each phase the very same object as long as she lies so. */
const laidInputs = (index: LaidInput['index'], reachesIn: Refit['reachesIn'], plan: Omit<LaidPlan, 'phase'>) => {
  const known = new Map<number, LaidInput>();
  return (phase: number): LaidInput => {
    const input = known.get(phase) ?? { index, plan: { phase, ...plan }, reaches: reachesIn(phase) };
    known.set(phase, input);
    return input;
  };
};

/** One boat without its needs, and what follows once its layouts are known. */
const laidBoat = (boat: BoatWithoutNeeds, late: LaidLateParts) => {
  const { stray, fitting, power, panels, energy, traffic, order, ledRound, choices } = late;
  const { index, joinsAt, refit } = standingBoat(boat);
  const problems = problemsOf(boat);
  const joins = joinsAt(lastPhase(boat));
  const before = roundPlan(beforeOf(refit));
  const standing = { problems, joinsAt, reachesIn: refit.reachesIn };
  const supply = { ...panels({ index, joinsAt }), ...energy({ index, joinsAt }), ...traffic({ index, joins }) };
  return remember({
    most: kept.layouts,
    keyOf: (layouts: LayoutMap) => JSON.stringify(problems.map(({ hash }) => layouts.get(hash))),
    find: (layouts) => {
      const buses = planBuses({ index, problems, layouts, joins });
      const { wiring, passages } = planRound({ index, buses, joins }, ledRound);
      const { lines, ways } = wiring;
      const powered = power({ index, joinsAt, lines, buses });
      const laidBuses = buses.map(({ entry }) => entry);
      const astray = stray({ index, ...powered, lines, joins, buses: laidBuses });
      const fitted = fitting({ index, ...powered, lines, joins, buses: laidBuses, compass: astray.compass });
      const ordered = order({ index, buses, lines, ways, feeds: powered.feeds, plates: fitted.plates });
      const laid = {
        ...wiring,
        ...powered,
        ...astray,
        ...fitted,
        ...supply,
        ...ordered,
        passages: passagesTogether(passages, ordered.passages),
      };
      // what looks on computes with the figures as they are; the plan shows them rounded
      const chosen = choices({ index, buses });
      const entries = buses.map(({ entry }) => ({ ...entry, ...chosen.get(entry.id) }));
      const shown = { laid: roundPlan(laid), buses: roundPlan(entries), before };
      const ruled = laidInputs({ ...index, boat }, refit.reachesIn, { ...shown.laid, buses: shown.buses });
      return { ...standing, buses, laid, shown, ruled };
    },
  });
};

/**
 * All of a plan that hangs on what is aboard and where it lies, but not on what is needed where, which source counts, or what a
 * person has accepted or ordered: those are taken out of the boat first. So an edit of a need, and a step back, find it as it was.
 */
export const planLaid = (late: LaidLateParts) => {
  const boats = remember({
    most: kept.boats,
    keyOf: (boat: BoatWithoutNeeds) => boatText(boat),
    find: (boat) => laidBoat(boat, late),
  });
  return (boat: Boat, layouts: LayoutMap) => boats(withoutNeeds(boat))(layouts);
};

/** A boat as she is laid, as `planLaid` keeps her. */
export type Laid = ReturnType<ReturnType<typeof planLaid>>;
