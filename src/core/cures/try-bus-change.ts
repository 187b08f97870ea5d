import type { Budget } from '../backbone/problem.ts';
import { problemsOf } from '../backbone/problems-of.ts';
import { keptLayout } from '../backbone/solve-layout.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { canonicalBoat } from '../boat/canonical-boat.ts';
import type { BusChange } from './bus-changes.ts';
import { byCost } from './candidate.ts';
import { type Held, heldTo, type MendedBus } from './held-limits.ts';
import { editedBoat } from './try-cure.ts';

/** Work for one try: enough to find a layout where there is one, little enough to try many. */
export const tryWork = { work: 4000 } as const;

/** Work for the price of a change that is told. */
const toldWork = { work: 16_000 } as const;

/** Work for all changes of one bus: more where it has no layout at all. */
const allWork: Readonly<Record<Held, number>> = { must: 60_000, warn: 30_000 };

/** A change to be tried, and the work given for it. */
interface Try {
  readonly change: BusChange;
  readonly budget: Budget;
}

/**
 * What the buses that a change touches cost then, in hundredths, absent where it does not fit or one of them has no layout;
 * the work to know, and whether nothing costs less.
 */
export interface ChangeCost {
  readonly cost?: number;
  readonly work: number;
  readonly isProven?: boolean;
}

export type CostOf = (tried: Try) => ChangeCost;

/** A change that gives each bus it touches a layout; its cost is what it costs more than the plan as it is. */
export interface HeldChange {
  readonly change: BusChange;
  readonly cost: number;
  readonly isProven: boolean;
}

/** Thousandths of a hundredth as whole hundredths. */
export const inHundredths = (cost: number): number => Math.round(cost / 1000);

/** The boat with a change in it; undefined where it does not fit. */
export const boatWith = (boat: Boat, change: BusChange): Boat | undefined =>
  change.byHand?.(boat) ?? editedBoat(boat, change);

/**
 * Makes a change on the boat and lays out the buses it touches, and no other. She has the joins proposed for her among her own,
 * and none more is looked for: what each change is asked next is whether all that arrives does so still by these.
 */
export const changeCost = (
  { boat, held }: { readonly boat: Boat; readonly held: Held },
  { change, budget }: Try,
): ChangeCost => {
  const after = boatWith(boat, change);
  if (after === undefined) return { work: 0 };
  let [cost, work] = [0, 0];
  let isProven = true;
  for (const problem of problemsOf(canonicalBoat(after), new Set(change.buses))) {
    if (problem.devices.length === 0) continue;
    const kept = keptLayout(heldTo(held, problem), budget);
    work += kept.work;
    if (kept.layout === undefined) return { work };
    cost += inHundredths(kept.layout.cost);
    isProven &&= kept.layout.status === 'proven';
  }
  return { cost, work, isProven };
};

/** What some buses cost as they are planned now, though they break their limits, in hundredths. */
export const costNow = (buses: readonly MendedBus[], ids: readonly string[]): number =>
  buses.reduce(
    (sum, { problem, layout }) => (ids.includes(problem.bus) ? sum + inHundredths(layout?.cost ?? 0) : sum),
    0,
  );

/** The buses of a boat as planned, the limits one of them is mended to keep, and what a change comes to. */
interface HeldAsk {
  readonly buses: readonly MendedBus[];
  readonly held: Held;
  readonly costOf: CostOf;
}

/** Changes that give each bus they touch a layout, cheapest first; of changes that stand for each other the first. */
export const heldChanges = ({ buses, held, costOf }: HeldAsk, changes: readonly BusChange[]): HeldChange[] => {
  const done = new Set<string>();
  let left = allWork[held];
  const found = changes.flatMap((change): HeldChange[] => {
    const { insteadOf, partsCost } = change;
    if (left <= 0 || (insteadOf !== undefined && done.has(insteadOf))) return [];
    const { cost, work, isProven = false } = costOf({ change, budget: tryWork });
    // What was found before counts as if it had to be found again: equal boats give equal answers.
    left -= work;
    if (cost === undefined) return [];
    if (insteadOf !== undefined) done.add(insteadOf);
    return [{ change, cost: cost + partsCost - costNow(buses, change.buses), isProven }];
  });
  return found.sort((one, other) => byCost({ ...one.change, cost: one.cost }, { ...other.change, cost: other.cost }));
};

/** The price of a change that is told, with more work where more work may lower it. */
export const finePrice = ({ buses, costOf }: HeldAsk, { change, cost, isProven }: HeldChange): number => {
  if (isProven) return cost;
  const fine = costOf({ change, budget: toldWork }).cost;
  return fine === undefined ? cost : Math.min(cost, fine + change.partsCost - costNow(buses, change.buses));
};
