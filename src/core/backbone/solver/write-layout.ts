import { byCodeUnit } from '../../boat/ids.ts';
import { canonicalJson } from '../canonical-json.ts';
import type { LayoutStep } from '../problem.ts';
import type { Ground } from './ground.ts';
import type { TeePlan } from './tee-plan.ts';

/**
 * The walk of a layout in words: tees of each step sorted, spares counted along the walk, and of the two directions the one
 * whose text comes first.
 */
export const writeWalk = (ground: Ground, plan: TeePlan): readonly LayoutStep[] => {
  const forth = directedWalk({ ground, plan, backwards: false });
  const back = directedWalk({ ground, plan, backwards: true });
  return byCodeUnit(canonicalJson(back), canonicalJson(forth)) < 0 ? back : forth;
};

const directedWalk = ({
  ground,
  plan,
  backwards,
}: {
  readonly ground: Ground;
  readonly plan: TeePlan;
  readonly backwards: boolean;
}): readonly LayoutStep[] => {
  const { places, ways } = plan.walk;
  const tees = places.map((): string[] => []);
  for (const [device, tee] of plan.tees.entries()) {
    if (tee !== undefined) tees[tee.step]?.push(ground.devices[device]?.id ?? '');
  }
  if (plan.feed !== undefined) tees[plan.feed.step]?.push('feed');
  for (const { place, count } of ground.spares) {
    const id = ground.problem.places[place]?.id ?? '';
    const first = backwards ? places.lastIndexOf(place) : places.indexOf(place);
    for (let n = 1; n <= count; n += 1) tees[first]?.push(`spare@${id}#${n}`);
  }
  const steps = places.map((place, step): LayoutStep => {
    const id = ground.problem.places[place]?.id ?? '';
    const way = backwards ? ways[step] : ways[step - 1];
    const via = way === undefined ? undefined : ground.ways[way]?.id;
    const own = [...(tees[step] ?? [])].sort(byCodeUnit);
    return via === undefined ? { place: id, tees: own } : { place: id, via, tees: own };
  });
  return backwards ? steps.reverse() : steps;
};
