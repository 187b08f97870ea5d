import type { Way } from './boat-schema.ts';
import { byCodeUnit } from './ids.ts';

/** Steps after which the search gives up; a cable's ways are a plain path but for a loop or two. */
const stepsAtMost = 10_000;

interface Walk {
  readonly ways: readonly Way[];
  readonly used: Set<number>;
  readonly order: string[];
  steps: number;
}

const otherEnd = (way: Way, place: string): string | undefined => {
  if (way.ends[0] === place) return way.ends[1];
  return way.ends[1] === place ? way.ends[0] : undefined;
};

const walkOn = (walk: Walk, place: string, goal: string): boolean => {
  if (walk.order.length === walk.ways.length) return place === goal;
  for (const [at, way] of walk.ways.entries()) {
    const next = walk.used.has(at) ? undefined : otherEnd(way, place);
    if (next === undefined) continue;
    walk.steps += 1;
    if (walk.steps > stepsAtMost) return false;
    walk.used.add(at);
    walk.order.push(way.id);
    if (walkOn(walk, next, goal)) return true;
    walk.used.delete(at);
    walk.order.pop();
  }
  return false;
};

/**
 * The ids of some ways in the order in which they are walked from one place to another, each used once; of several such
 * orders the first by code unit. Undefined where they make no such path.
 */
export const walkingOrder = (
  ways: readonly Way[],
  { from, to }: { from: string; to: string },
): readonly string[] | undefined => {
  // deeper recursion than this is no cable, and would not be safe
  if (ways.length > 500) return undefined;
  const sorted = [...ways].sort((a, b) => byCodeUnit(a.id, b.id));
  const walk: Walk = { ways: sorted, used: new Set(), order: [], steps: 0 };
  return walkOn(walk, from, to) ? walk.order : undefined;
};
