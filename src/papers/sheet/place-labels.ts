import { type Box, contains, grown, insideMm, overlaps } from '../drawing/box.ts';
import { around, crosses, pieceBox } from '../drawing/piece.ts';
import { distanceMm, type Point } from '../drawing/point.ts';
import {
  type Cluster,
  columnAt,
  numbersAt,
  type PlacedRow,
  rangeAt,
  rangeText,
  rowsOf,
  type Setting,
  wordsMm,
} from './label-form.ts';
import type { Run } from './lines-on-view.ts';

export interface PlacedCluster {
  readonly id: string;
  readonly rows: readonly PlacedRow[];
  /** the one long balloon in place of those of the rows */
  readonly range?: { readonly box: Box; readonly text: string };
  readonly leader: readonly [Point, Point];
}

export interface SoftLine {
  readonly from: Point;
  readonly to: Point;
  readonly costPerMm: number;
}

export interface LabelRoom {
  /** where balloons may stand */
  readonly within: Box;
  /** boxes that nothing may touch */
  readonly taken: readonly Box[];
  /** lines that nothing may cover */
  readonly runs: readonly Run[];
  /** lines that are better left clear, and how much each millimetre of them under a label costs */
  readonly soft: readonly SoftLine[];
  /** other marks that nothing may cover and no leader should pass through */
  readonly points: readonly Point[];
  readonly radiusMm: number;
  readonly words: boolean;
}

const turns = Array.from(
  { length: 24 },
  (_, step): Point => [Math.cos((step * Math.PI) / 12), Math.sin((step * Math.PI) / 12)],
);
const reachesMm = [4.2, 5.5, 7, 9, 11.5, 14.5, 18, 22, 27, 33, 40, 48, 58];

/** Costs are millimetres of leader that one would rather draw than have the fault. */
const cost = { noWords: 20, range: 40, crossing: 14, leaderOverText: 14, leaderOverLine: 3, leaderNearPoint: 16 };

/** More units than this at one place get numbers only. */
const mostInColumn = 6;

/** Fewer units than this at one place take no more room as balloons of their own. */
const leastInRange = 3;

/** Air kept between balloons and all else, and around the marks of places. */
const airMm = 0.5;
const markMm = 1.3;

const boxOfRun = ({ from, to, halfMm }: Run): Box => grown(pieceBox(from, to), halfMm + airMm);

/** What stands still, made once for a view. */
interface Obstacles {
  readonly room: LabelRoom;
  /** the box of each run, its own width and air added: a cheap first question */
  readonly runs: readonly { readonly run: Run; readonly box: Box }[];
  readonly marks: readonly { readonly point: Point; readonly box: Box }[];
}

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

const standingCost = ({ box, leader }: Setting, { room, marks }: Obstacles): number => {
  const [from, to] = leader;
  let sum = distanceMm(from, to);
  for (const line of room.soft) sum += insideMm(box, line.from, line.to) * line.costPerMm;
  for (const run of room.runs) if (crosses(leader, [run.from, run.to])) sum += cost.leaderOverLine;
  for (const taken of room.taken) if (insideMm(taken, from, to) > 0.2) sum += cost.leaderOverText;
  for (const mark of marks) {
    if (distanceMm(mark.point, from) > airMm && insideMm(mark.box, from, to) > 0) sum += cost.leaderNearPoint;
  }
  return sum;
};

interface Option {
  readonly setting: Setting;
  readonly standing: number;
}

/** Every setting of a cluster that touches nothing that stands still, cheapest first. */
const optionsOf = (cluster: Cluster, all: Obstacles): Option[] => {
  const obstacles = obstaclesNear(cluster, all);
  const { room } = obstacles;
  const { radiusMm } = room;
  const options: Option[] = [];
  const wideMm = wordsMm(cluster);
  const offer = (setting: Setting, ownCost: number): void => {
    if (mayStand(setting.box, obstacles)) {
      options.push({ setting, standing: ownCost + standingCost(setting, obstacles) });
    }
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
  return options.sort((a, b) => a.standing - b.standing);
};

/** Cost against the other balloons as they stand now: undefined where the two would touch. */
const costBeside = (setting: Setting, others: readonly Setting[]): number | undefined => {
  const air = grown(setting.box, airMm);
  let sum = 0;
  for (const other of others) {
    if (overlaps(air, other.box)) return undefined;
    if (insideMm(setting.box, ...other.leader) > 0 || insideMm(other.box, ...setting.leader) > 0) return undefined;
    if (crosses(setting.leader, other.leader)) sum += cost.crossing;
  }
  return sum;
};

const bestOption = (options: readonly Option[], others: readonly Setting[]): Setting | undefined => {
  let best: { setting: Setting; sum: number } | undefined;
  for (const { setting, standing } of options) {
    if (best !== undefined && standing >= best.sum) break;
    const beside = costBeside(setting, others);
    if (beside === undefined) continue;
    if (best === undefined || standing + beside < best.sum) best = { setting, sum: standing + beside };
  }
  return best?.setting;
};

const refinements = 3;

/**
 * Finds a place for every cluster of balloons: none touches another, a text or a line, and leaders are short and cross
 * little. The most crowded choose first; then each in turn moves to the best place left by the others.
 * A cluster that fits nowhere is left out. Equal input gives equal places.
 */
export const placeLabels = (clusters: readonly Cluster[], room: LabelRoom): PlacedCluster[] => {
  const obstacles = {
    room,
    runs: room.runs.map((run) => ({ run, box: boxOfRun(run) })),
    marks: room.points.map((point) => ({ point, box: around(point, markMm) })),
  };
  const wanting = clusters.map((cluster) => ({ cluster, options: optionsOf(cluster, obstacles) }));
  wanting.sort(
    (a, b) =>
      a.options.length / a.cluster.rows.length - b.options.length / b.cluster.rows.length ||
      (a.cluster.id < b.cluster.id ? -1 : 1),
  );
  const placed = new Map<string, Setting>();
  for (let round = 0; round <= refinements; round++) {
    for (const { cluster, options } of wanting) {
      placed.delete(cluster.id);
      const best = bestOption(options, [...placed.values()]);
      if (best !== undefined) placed.set(cluster.id, best);
    }
  }
  return clusters.flatMap((cluster) => {
    const setting = placed.get(cluster.id);
    if (setting === undefined) return [];
    const { leader, form, box } = setting;
    if (form === 'range') return [{ id: cluster.id, rows: [], range: { box, text: rangeText(cluster) }, leader }];
    return [{ id: cluster.id, rows: rowsOf(cluster, setting, room.radiusMm), leader }];
  });
};
