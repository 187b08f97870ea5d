import type { Box } from '../drawing/box.ts';
import { byLeast, type Priced, priced } from '../drawing/cheapest.ts';
import { around } from '../drawing/piece.ts';
import { distanceMm, type Point } from '../drawing/point.ts';
import { type Cluster, columnAt, numbersAt, rangeAt, type Setting, wordsMm } from './label-form.ts';
import type { LabelRoom } from './label-room.ts';
import { type FaultCosts, faultsOf, mayStand, type Obstacles, obstaclesIn, obstaclesNear } from './obstacles.ts';

const turns = Array.from(
  { length: 24 },
  (_, step): Point => [Math.cos((step * Math.PI) / 12), Math.sin((step * Math.PI) / 12)],
);
const reachesMm = [4.2, 5.5, 7, 9, 11.5, 14.5, 18, 22, 27, 33, 40, 48, 58];

/** Costs are millimetres of leader that one would rather draw than have the fault. */
const cost = { noWords: 20, range: 40 };
const faultCosts: FaultCosts = { leaderOverText: 14, leaderOverLine: 3, leaderNearPoint: 16, lineCovered: 0 };

/** More units than this at one place get numbers only. */
const mostInColumn = 6;

/** Fewer units than this at one place take no more room as balloons of their own. */
const leastInRange = 3;

/** Air kept between balloons and all else, and around the marks of places. */
export const airMm = 0.5;
const markMm = 1.3;

/** What stands still in a view, with the air of balloons. */
export const balloonObstacles = (room: LabelRoom): Obstacles => obstaclesIn(room, { airMm, markMm });

/** So many settings are choice enough; those farther off are not tried. */
const enoughOptions = 150;

/** All that a cluster could touch, however far off it is set. */
const reachOf = (cluster: Cluster, radiusMm: number): Box => {
  const sizeMm = 2 * radiusMm * cluster.rows.length + wordsMm(cluster);
  return around(cluster.at, (reachesMm.at(-1) ?? 0) + sizeMm);
};

export interface Option extends Priced {
  readonly setting: Setting;
}

/** Every setting of a cluster that touches nothing that stands still, by what it costs at the least. */
export const optionsOf = (cluster: Cluster, { radiusMm, words }: LabelRoom, all: Obstacles): Option[] => {
  const obstacles = obstaclesNear(all, [reachOf(cluster, radiusMm)]);
  const options: Option[] = [];
  const wideMm = wordsMm(cluster);
  const offer = (setting: Setting, own: number): void => {
    if (!mayStand(setting.box, obstacles)) return;
    const least = own + distanceMm(...setting.leader);
    const rest = (): number => faultsOf(setting, obstacles, faultCosts);
    options.push({ setting, ...priced({ at: options.length, least, rest }) });
  };
  for (const reachMm of reachesMm) {
    if (options.length >= enoughOptions) break;
    for (const turn of turns) {
      const key: Point = [cluster.at[0] + turn[0] * reachMm, cluster.at[1] + turn[1] * reachMm];
      if (words && cluster.rows.length <= mostInColumn) offer(columnAt(cluster, key, { radiusMm, wideMm }), 0);
      offer(numbersAt(cluster, key, radiusMm), words ? cost.noWords * cluster.rows.length : 0);
      if (cluster.rows.length >= leastInRange) {
        offer(rangeAt(cluster, key, radiusMm), cost.range + (words ? cost.noWords * cluster.rows.length : 0));
      }
    }
  }
  return options.sort(byLeast);
};
