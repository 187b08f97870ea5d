import { type Box, grown, insideMm, overlaps } from '../drawing/box.ts';
import { byLeast, cheapest, type Priced, priced } from '../drawing/cheapest.ts';
import { around, crosses, type Piece } from '../drawing/piece.ts';
import { distanceMm, type Point } from '../drawing/point.ts';
import type { Room } from '../sheet/label-room.ts';
import { type FaultCosts, faultsOf, mayStand, type Obstacles, obstaclesIn, obstaclesNear } from '../sheet/obstacles.ts';

/** One way to write a note: how large it is, and how many millimetres of leader it is worth not to write it so. */
export interface NoteForm {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly costMm: number;
  /** from its left edge to what its leader wants to meet: that stands straight over or under the anchor where the note does */
  readonly hookMm?: number;
}

/** Words that want a place beside one of their anchors: a mark, or several points along a line. */
export interface Note {
  readonly id: string;
  readonly anchors: readonly Point[];
  /** the best first */
  readonly forms: readonly NoteForm[];
}

export interface PlacedNote {
  readonly id: string;
  /** which of its forms it has */
  readonly form: number;
  readonly box: Box;
  readonly anchor: Point;
  /** from the anchor to the box; absent where the note stands at its anchor */
  readonly leader?: Piece;
}

const turns = Array.from(
  { length: 16 },
  (_, step): Point => [Math.cos((step * Math.PI) / 8), Math.sin((step * Math.PI) / 8)],
);
/** Reaches of leaders, nearest first; each row looks only at what lies so near. */
const reachesMm = [
  [1.6, 2.4, 3.4, 4.6, 6],
  [8, 10.5, 13.5, 17],
  [21, 26, 32, 39, 47, 56, 66],
];

/** Costs are millimetres of leader that one would rather draw than have the fault. */
const cost = { crossing: 14, leaderUnderNote: 20 };
const faultCosts: FaultCosts = { leaderOverText: 14, leaderOverLine: 2.5, leaderNearPoint: 14, lineCovered: 6 };

const airMm = 0.6;
const markMm = 1.5;
/** How ill a note stands that lies over a line, whose leader runs under another, or that is far off. */
const strains = { overLine: 3, leaderUnder: 1, farOff: 0.5 };
const farOffMm = 20;
/** A note nearer than this needs no leader. */
const atAnchorMm = 2.5;
const enough = 110;
const refinements = 3;

interface Option extends Priced {
  readonly form: number;
  readonly box: Box;
  readonly leader: Piece;
}

const clamp = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));

/** The box of a form whose nearest edge lies `reachMm` off the anchor in a direction. */
const boxAt = (anchor: Point, turn: Point, reachMm: number, { widthMm, heightMm, hookMm }: NoteForm): Box => {
  const middle = (at: number, along: number, sizeMm: number): number =>
    at + along * reachMm + (clamp(along * 1.45, -1, 1) * sizeMm) / 2;
  const isUpright = hookMm !== undefined && Math.abs(turn[0]) < 0.01;
  const xMm = isUpright ? anchor[0] - hookMm + widthMm / 2 : middle(anchor[0], turn[0], widthMm);
  const yMm = middle(anchor[1], turn[1], heightMm);
  return {
    leftMm: xMm - widthMm / 2,
    rightMm: xMm + widthMm / 2,
    topMm: yMm - heightMm / 2,
    bottomMm: yMm + heightMm / 2,
  };
};

const leaderTo = (anchor: Point, box: Box): Piece => [
  anchor,
  [clamp(anchor[0], box.leftMm, box.rightMm), clamp(anchor[1], box.topMm, box.bottomMm)],
];

/** All that a note could touch with a leader of so many millimetres. */
const reachOf = ({ anchors, forms }: Note, mostMm: number): Box[] => {
  const sizeMm = Math.max(...forms.map(({ widthMm, heightMm }) => widthMm + heightMm));
  return anchors.map((anchor) => around(anchor, mostMm + sizeMm));
};

const offer = (options: Option[], note: Note, reachMm: number, obstacles: Obstacles, isPressed: boolean): void => {
  for (const anchor of note.anchors) {
    for (const turn of turns) {
      for (const [form, size] of note.forms.entries()) {
        const box = boxAt(anchor, turn, reachMm, size);
        if (!mayStand(box, obstacles, isPressed)) continue;
        const leader = leaderTo(anchor, box);
        const least = size.costMm + distanceMm(...leader);
        const rest = (): number => faultsOf({ box, leader }, obstacles, faultCosts);
        options.push({ form, box, leader, ...priced({ at: options.length, least, rest }) });
      }
    }
  }
};

/** Every box of a note that touches nothing that stands still, by what it costs at the least. Pressed, it may lie over a line. */
const optionsOf = (note: Note, all: Obstacles, { isPressed, most }: { isPressed: boolean; most: number }): Option[] => {
  const options: Option[] = [];
  for (const reaches of reachesMm) {
    if (options.length >= most) break;
    const obstacles = obstaclesNear(all, reachOf(note, reaches.at(-1) ?? 0));
    for (const reachMm of reaches) offer(options, note, reachMm, obstacles, isPressed);
  }
  return options.sort(byLeast);
};

/** Cost against the other notes as they stand now; undefined where they touch, or a leader runs under a note that may not. */
const costBeside = ({ box, leader }: Option, others: readonly Option[], mayUnder: boolean): number | undefined => {
  const air = grown(box, airMm);
  let sum = 0;
  for (const other of others) {
    if (overlaps(air, other.box)) return undefined;
    if (insideMm(box, ...other.leader) > 0 || insideMm(other.box, ...leader) > 0) {
      if (!mayUnder) return undefined;
      sum += cost.leaderUnderNote;
    }
    if (crosses(leader, other.leader)) sum += cost.crossing;
  }
  return sum;
};

const bestOption = (options: readonly Option[], others: readonly Option[], mayUnder = false): Option | undefined =>
  cheapest(options, (option) => costBeside(option, others, mayUnder));

/**
 * Finds a place for every note: none touches another, a text, a mark or a line, and leaders are short and cross little.
 * The most crowded choose first, then each in turn moves to the best place the others leave. A note that finds none may have
 * its leader run under another, then lie over a line; one that finds none even so is lost. Equal input gives equal places.
 */
export const placeNotes = (
  notes: readonly Note[],
  room: Room,
): { readonly placed: readonly PlacedNote[]; readonly strain: number; readonly lost: readonly string[] } => {
  const obstacles = obstaclesIn(room, { airMm, markMm });
  const wanting = notes.map((note) => ({
    note,
    options: optionsOf(note, obstacles, { isPressed: false, most: enough }),
  }));
  wanting.sort((a, b) => a.options.length - b.options.length || (a.note.id < b.note.id ? -1 : 1));
  const placed = new Map<string, Option>();
  for (let round = 0; round <= refinements; round++) {
    for (const { note, options } of wanting) {
      placed.delete(note.id);
      const best = bestOption(options, [...placed.values()]);
      if (best !== undefined) placed.set(note.id, best);
    }
  }
  let strain = 0;
  for (const { note } of wanting) {
    if (placed.has(note.id)) continue;
    for (const isPressed of [false, true]) {
      const options = optionsOf(note, obstacles, { isPressed, most: Number.POSITIVE_INFINITY });
      const best = bestOption(options, [...placed.values()], true);
      if (best === undefined) continue;
      placed.set(note.id, best);
      strain += isPressed ? strains.overLine : strains.leaderUnder;
      break;
    }
  }
  return {
    placed: notes.flatMap(({ id }): PlacedNote[] => {
      const option = placed.get(id);
      if (option === undefined) return [];
      const { form, box, leader } = option;
      return [{ id, form, box, anchor: leader[0], ...(distanceMm(...leader) > atAnchorMm ? { leader } : {}) }];
    }),
    strain:
      strain + strains.farOff * [...placed.values()].filter(({ leader }) => distanceMm(...leader) > farOffMm).length,
    lost: notes.flatMap(({ id }) => (placed.has(id) ? [] : [id])),
  };
};
