import { type Box, contains, grown, insideMm, overlaps } from '../drawing/box.ts';
import { byLeast, type Priced, priced } from '../drawing/cheapest.ts';
import { around, crosses, pieceBox } from '../drawing/piece.ts';
import { distanceMm, type Point } from '../drawing/point.ts';
import { type Cluster, columnAt, numbersAt, rangeAt, type Setting, wordsMm } from './label-form.ts';
import type { LabelRoom } from './label-room.ts';
import type { Run } from './lines-on-view.ts';

const turns = Array.from(
  { length: 24 },
  (_, step): Point => [Math.cos((step * Math.PI) / 12), Math.sin((step * Math.PI) / 12)],
);
const reachesMm = [4.2, 5.5, 7, 9, 11.5, 14.5, 18, 22, 27, 33, 40, 48, 58];

/** Costs are millimetres of leader that one would rather draw than have the fault. */
const cost = { noWords: 20, range: 40, leaderOverText: 14, leaderOverLine: 3, leaderNearPoint: 16 };

/** More units than this at one place get numbers only. */
const mostInColumn = 6;

/** Fewer units than this at one place take no more room as balloons of their own. */
const leastInRange = 3;

/** Air kept between balloons and all else, and around the marks of places. */
export const airMm = 0.5;
const markMm = 1.3;

const boxOfRun = ({ from, to, halfMm }: Run): Box => grown(pieceBox(from, to), halfMm + airMm);

/** What stands still, made once for a view. */
interface Obstacles {
  readonly room: LabelRoom;
  /** the box of each run, its own width and air added: a cheap first question */
  readonly runs: readonly { readonly run: Run; readonly box: Box }[];
  readonly marks: readonly { readonly point: Point; readonly box: Box }[];
}

/** What stands still in a view, made ready to be asked many times. */
export const obstaclesIn = (room: LabelRoom): Obstacles => ({
  room,
  runs: room.runs.map((run) => ({ run, box: boxOfRun(run) })),
  marks: room.points.map((point) => ({ point, box: around(point, markMm) })),
});

const mayStand = (box: Box, { room, runs, marks }: Obstacles): boolean => {
  if (!contains(room.within, box)) return false;
  const air = grown(box, airMm);
  return (
    !room.taken.some((taken) => overlaps(air, taken)) &&
    !marks.some((mark) => overlaps(air, mark.box)) &&
    !runs.some(
      ({ run, box: near }) => overlaps(box, near) && insideMm(grown(box, run.halfMm + airMm), run.from, run.to) > 0,
    )
  );
};

/** So many settings are choice enough; those farther off are not tried. */
const enoughOptions = 150;

/** What a cluster could touch at all, however far off it is set: on a long boat a small part of everything. */
const obstaclesNear = (cluster: Cluster, { room, runs, marks }: Obstacles): Obstacles => {
  const sizeMm = 2 * room.radiusMm * cluster.rows.length + wordsMm(cluster);
  const reach = around(cluster.at, (reachesMm.at(-1) ?? 0) + sizeMm);
  const near = runs.filter(({ box }) => overlaps(box, reach));
  return {
    room: {
      ...room,
      taken: room.taken.filter((box) => overlaps(box, reach)),
      soft: room.soft.filter(({ from, to }) => overlaps(grown(pieceBox(from, to), airMm), reach)),
      runs: near.map(({ run }) => run),
    },
    runs: near,
    marks: marks.filter(({ box }) => overlaps(box, reach)),
  };
};

/** What a setting costs besides the length of its leader. */
const faultsOf = ({ box, leader }: Setting, { room, marks }: Obstacles): number => {
  const [from, to] = leader;
  let sum = 0;
  for (const line of room.soft) sum += insideMm(box, line.from, line.to) * line.costPerMm;
  for (const run of room.runs) if (crosses(leader, [run.from, run.to])) sum += cost.leaderOverLine;
  for (const taken of room.taken) if (insideMm(taken, from, to) > 0.2) sum += cost.leaderOverText;
  for (const mark of marks) {
    if (distanceMm(mark.point, from) > airMm && insideMm(mark.box, from, to) > 0) sum += cost.leaderNearPoint;
  }
  return sum;
};

export interface Option extends Priced {
  readonly setting: Setting;
}

/** Every setting of a cluster that touches nothing that stands still, by what it costs at the least. */
export const optionsOf = (cluster: Cluster, all: Obstacles): Option[] => {
  const obstacles = obstaclesNear(cluster, all);
  const { room } = obstacles;
  const { radiusMm } = room;
  const options: Option[] = [];
  const wideMm = wordsMm(cluster);
  const offer = (setting: Setting, own: number): void => {
    if (!mayStand(setting.box, obstacles)) return;
    const least = own + distanceMm(...setting.leader);
    options.push({ setting, ...priced({ at: options.length, least, rest: () => faultsOf(setting, obstacles) }) });
  };
  for (const reachMm of reachesMm) {
    if (options.length >= enoughOptions) break;
    for (const turn of turns) {
      const key: Point = [cluster.at[0] + turn[0] * reachMm, cluster.at[1] + turn[1] * reachMm];
      if (room.words && cluster.rows.length <= mostInColumn) offer(columnAt(cluster, key, { radiusMm, wideMm }), 0);
      offer(numbersAt(cluster, key, radiusMm), room.words ? cost.noWords * cluster.rows.length : 0);
      if (cluster.rows.length >= leastInRange) {
        offer(rangeAt(cluster, key, radiusMm), cost.range + (room.words ? cost.noWords * cluster.rows.length : 0));
      }
    }
  }
  return options.sort(byLeast);
};
