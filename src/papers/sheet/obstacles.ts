import { type Box, contains, grown, insideMm, overlaps } from '../drawing/box.ts';
import { around, crosses, type Piece, pieceBox } from '../drawing/piece.ts';
import { distanceMm, type Point } from '../drawing/point.ts';
import type { Room, SoftLine } from './label-room.ts';
import type { Run } from './lines-on-view.ts';

/** What stands still where labels or notes want a place, made ready to be asked many times. */
export interface Obstacles {
  /** kept between them and all else */
  readonly airMm: number;
  readonly within: Box;
  readonly taken: readonly Box[];
  /** the box of each run, its own width and air added: a cheap first question */
  readonly runs: readonly { readonly run: Run; readonly piece: Piece; readonly box: Box }[];
  readonly soft: readonly SoftLine[];
  readonly marks: readonly { readonly point: Point; readonly box: Box }[];
}

/** `markMm`: what a mark takes to each side of its point. */
export const obstaclesIn = (room: Room, { airMm, markMm }: { airMm: number; markMm: number }): Obstacles => ({
  airMm,
  within: room.within,
  taken: room.taken,
  runs: room.runs.map((run) => ({
    run,
    piece: [run.from, run.to],
    box: grown(pieceBox(run.from, run.to), run.halfMm + airMm),
  })),
  soft: room.soft,
  marks: room.points.map((point) => ({ point, box: around(point, markMm) })),
});

/** Those that can be touched from within some boxes: on a long boat a small part of everything. */
export const obstaclesNear = (all: Obstacles, reach: readonly Box[]): Obstacles => {
  const near = (box: Box): boolean => reach.some((one) => overlaps(box, one));
  return {
    ...all,
    taken: all.taken.filter(near),
    runs: all.runs.filter(({ box }) => near(box)),
    soft: all.soft.filter(({ from, to }) => near(grown(pieceBox(from, to), all.airMm))),
    marks: all.marks.filter(({ box }) => near(box)),
  };
};

/** Whether a box may stand in the room: it touches nothing that stands still, or lines alone where it may cover those. */
export const mayStand = (
  box: Box,
  { airMm, within, taken, runs, marks }: Obstacles,
  mayCoverLines = false,
): boolean => {
  if (!contains(within, box)) return false;
  const air = grown(box, airMm);
  for (const one of taken) if (overlaps(air, one)) return false;
  for (const mark of marks) if (overlaps(air, mark.box)) return false;
  if (mayCoverLines) return true;
  for (const { run, box: near } of runs) {
    if (overlaps(box, near) && insideMm(grown(box, run.halfMm + airMm), run.from, run.to) > 0) return false;
  }
  return true;
};

/** Faults in millimetres of leader that one would rather draw than have them. */
export interface FaultCosts {
  readonly leaderOverText: number;
  readonly leaderOverLine: number;
  readonly leaderNearPoint: number;
  /** for each millimetre of a line that nothing should cover */
  readonly lineCovered: number;
}

/** What a box and its leader cost besides the length of the leader. */
export const faultsOf = (
  { box, leader }: { readonly box: Box; readonly leader: Piece },
  { airMm, taken, runs, soft, marks }: Obstacles,
  cost: FaultCosts,
): number => {
  const [from, to] = leader;
  let sum = 0;
  for (const line of soft) sum += insideMm(box, line.from, line.to) * line.costPerMm;
  for (const { run, piece, box: near } of runs) {
    if (crosses(leader, piece)) sum += cost.leaderOverLine;
    if (overlaps(box, near)) sum += cost.lineCovered * insideMm(box, run.from, run.to);
  }
  for (const one of taken) if (insideMm(one, from, to) > 0.2) sum += cost.leaderOverText;
  for (const mark of marks) {
    if (distanceMm(mark.point, from) > airMm && insideMm(mark.box, from, to) > 0) sum += cost.leaderNearPoint;
  }
  return sum;
};
