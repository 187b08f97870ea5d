import type { DropOption, Ground, TeeChoice } from './ground.ts';
import { judgeTees, type MeasuredWalk, measureWalk, type TeePlan } from './tee-plan.ts';
import { isBetter } from './trunk-value.ts';
import type { TrunkWalk } from './trunk-walks.ts';

/** How many rounds of single moves may mend a walk whose tees break a limit. */
const mendingRounds = 4;

/**
 * The tees of a walk: each device at its cheapest place within the limit of one drop, on the pass nearest the middle of the
 * trunk. Where that breaks a limit (all drops together, the farthest pair, current, volts), tees are moved one at a time as
 * long as it helps and `least`, what the trunk breaks whatever its tees, is not reached. `spend` counts every trial.
 */
export const placeTees = ({
  ground,
  walk,
  least,
  spend,
}: {
  readonly ground: Ground;
  readonly walk: TrunkWalk;
  readonly least: number;
  readonly spend: (trials: number) => void;
}): TeePlan | undefined => {
  const measured = measureWalk(ground, walk);
  let plan = judgeTees({ ground, measured, tees: cheapestTees(ground, measured) });
  spend(1);
  for (let round = 0; round < mendingRounds && plan !== undefined && plan.value.violation > least; round += 1) {
    const mended = bestSingleMove({ ground, measured, plan, spend });
    if (mended === undefined) break;
    plan = mended;
  }
  return plan;
};

const cheapestTees = (ground: Ground, { atMm, stepsAt }: MeasuredWalk): (TeeChoice | undefined)[] => {
  const middleMm = (atMm.at(-1) ?? 0) / 2;
  const awayMm = (step: number): number => Math.abs((atMm[step] ?? 0) - middleMm);
  const stepFor = (place: number): number =>
    [...(stepsAt.get(place) ?? [])].sort((one, other) => awayMm(one) - awayMm(other) || one - other)[0] ?? 0;
  return cheapestDrops(ground, (place) => stepsAt.has(place)).map((option) =>
    option === undefined ? undefined : { step: stepFor(option.place), option },
  );
};

/**
 * The cheapest drop of each device from a place on the trunk; while all together are too long, the one is shortened that
 * costs least for each millimetre it saves.
 */
const cheapestDrops = (ground: Ground, isOnTrunk: (place: number) => boolean): (DropOption | undefined)[] => {
  const drops = ground.devices.map(({ options }) => options.find(({ place }) => isOnTrunk(place)));
  let overMm = drops.reduce((sum, drop) => sum + (drop?.boughtMm ?? 0), -ground.problem.limits.dropsMm);
  while (overMm > 0) {
    let best: { device: number; option: DropOption; savesMm: number; costPerMm: number } | undefined;
    for (const [device, now] of drops.entries()) {
      for (const option of ground.devices[device]?.shortest ?? []) {
        const savesMm = (now?.boughtMm ?? 0) - option.boughtMm;
        if (now === undefined || savesMm <= 0 || !isOnTrunk(option.place)) continue;
        const costPerMm = (option.cost - now.cost) / savesMm;
        if (best === undefined || costPerMm < best.costPerMm) best = { device, option, savesMm, costPerMm };
      }
    }
    if (best === undefined) break;
    drops[best.device] = best.option;
    overMm -= best.savesMm;
  }
  return drops;
};

const bestSingleMove = ({
  ground,
  measured,
  plan,
  spend,
}: {
  readonly ground: Ground;
  readonly measured: MeasuredWalk;
  readonly plan: TeePlan;
  readonly spend: (trials: number) => void;
}): TeePlan | undefined => {
  let best: TeePlan | undefined;
  for (const [device, { options }] of ground.devices.entries()) {
    const now = plan.tees[device];
    for (const option of options) {
      for (const step of measured.stepsAt.get(option.place) ?? []) {
        if (step === now?.step) continue;
        const tees = plan.tees.with(device, { step, option });
        const moved = judgeTees({ ground, measured, tees, most: (best ?? plan).value.violation });
        spend(1);
        if (moved !== undefined && isBetter(moved.value, (best ?? plan).value)) best = moved;
      }
    }
  }
  return best;
};
