import type { Problem } from '../problem.ts';
import { type Ground, layGround } from './ground.ts';

/**
 * A cost that no layout keeping every limit can be under, in thousandths of a hundredth: the least over all grades of
 * terminators, feed, a tee for every device, spare and the feed, and the lesser of
 * - a trunk of no length at the best place for it, every drop and the feed lead measured from there, and
 * - the cheapest way of trunk, each drop from its cheapest place within the limit of one drop, and the shortest feed lead.
 * A layout has either no trunk or one way of it at least, and its drops and lead are no cheaper than their cheapest, so
 * this holds whatever the other limits do. It lies well under the optimum of most boats.
 */
export const layoutBound = (problem: Problem): number => {
  const bounds = problem.grades.map((grade) => gradeBound(layGround({ problem, grade, stretched: true })));
  return Math.min(...bounds);
};

const gradeBound = (ground: Ground): number => {
  const { problem, devices, spares, teeCost } = ground;
  const spareTees = spares.reduce((sum, { count }) => sum + count, 0);
  const fixed = ground.fixedCost + ground.feedCost + (devices.length + spareTees) * teeCost;
  const dropsCost = (mayStand: (place: number) => boolean): number => {
    const drops = devices.map(({ options }) =>
      options.find(({ place, boughtMm }) => boughtMm <= problem.limits.dropMm && mayStand(place)),
    );
    const lead = ground.leads.find(({ place }) => mayStand(place));
    if (lead === undefined || drops.includes(undefined)) return Number.POSITIVE_INFINITY;
    return drops.reduce((sum, drop) => sum + (drop?.cost ?? 0), lead.cost);
  };
  const atOnePlace = problem.places.map((_, at) => dropsCost((place) => place === at));
  const oneWay = Math.min(...ground.ways.map(({ cost }) => cost));
  const bound = fixed + Math.min(...atOnePlace, dropsCost(() => true) + oneWay);
  return Number.isFinite(bound) ? bound : fixed;
};
