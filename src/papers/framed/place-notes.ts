import { type Box, contains, grown, insideMm, overlaps } from '../drawing/box.ts';
import { byLeast, cheapest, type Priced, priced } from '../drawing/cheapest.ts';
import { around, crosses, type Piece, pieceBox } from '../drawing/piece.ts';
import { distanceMm, type Point } from '../drawing/point.ts';
import type { SoftLine } from '../sheet/label-room.ts';
import type { Run } from '../sheet/lines-on-view.ts';

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

/** What notes must keep clear of. */
export interface NoteRoom {
  readonly within: Box;
  /** boxes that nothing may touch */
  readonly taken: readonly Box[];
  /** lines that nothing may cover */
  readonly runs: readonly Run[];
  /** lines that are better left clear */
  readonly soft: readonly SoftLine[];
  /** marks that no note may cover and no leader should pass through */
  readonly points: readonly Point[];
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
const cost = { crossing: 14, leaderOverText: 14, leaderOverLine: 2.5, leaderNearPoint: 14, leaderUnderNote: 20 };

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

interface Obstacles {
  readonly room: NoteRoom;
  readonly runs: readonly { readonly run: Run; readonly box: Box }[];
  readonly marks: readonly { readonly point: Point; readonly box: Box }[];
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

const mayStand = (box: Box, { room, runs, marks }: Obstacles, isPressed: boolean): boolean => {
  if (!contains(room.within, box)) return false;
  const air = grown(box, airMm);
  return (
    !room.taken.some((taken) => overlaps(air, taken)) &&
    !marks.some((mark) => overlaps(air, mark.box)) &&
    (isPressed ||
      !runs.some(
        ({ run, box: near }) => overlaps(air, near) && insideMm(grown(box, run.halfMm + airMm), run.from, run.to) > 0,
      ))
  );
};

/** What a box and its leader cost besides the length of the leader. */
const faultsOf = (box: Box, leader: Piece, { room, runs, marks }: Obstacles): number => {
  const [from, to] = leader;
  let sum = 0;
  for (const line of room.soft) sum += insideMm(box, line.from, line.to) * line.costPerMm;
  for (const { run } of runs) {
    if (crosses(leader, [run.from, run.to])) sum += cost.leaderOverLine;
    sum += 6 * insideMm(box, run.from, run.to);
  }
  for (const taken of room.taken) if (insideMm(taken, from, to) > 0.2) sum += cost.leaderOverText;
  for (const mark of marks) {
    if (distanceMm(mark.point, from) > airMm && insideMm(mark.box, from, to) > 0) sum += cost.leaderNearPoint;
  }
  return sum;
};

const nearTo = ({ anchors, forms }: Note, mostMm: number, { room, runs, marks }: Obstacles): Obstacles => {
  const sizeMm = Math.max(...forms.map(({ widthMm, heightMm }) => widthMm + heightMm));
  const reachMm = mostMm + sizeMm;
  const near = (box: Box): boolean => anchors.some((anchor) => overlaps(box, around(anchor, reachMm)));
  return {
    room: {
      ...room,
      taken: room.taken.filter(near),
      soft: room.soft.filter(({ from, to }) => near(grown(pieceBox(from, to), airMm))),
    },
    runs: runs.filter(({ box }) => near(box)),
    marks: marks.filter(({ box }) => near(box)),
  };
};

const offer = (options: Option[], note: Note, reachMm: number, obstacles: Obstacles, isPressed: boolean): void => {
  for (const anchor of note.anchors) {
    for (const turn of turns) {
      for (const [form, size] of note.forms.entries()) {
        const box = boxAt(anchor, turn, reachMm, size);
        if (!mayStand(box, obstacles, isPressed)) continue;
        const leader = leaderTo(anchor, box);
        const least = size.costMm + distanceMm(...leader);
        const rest = (): number => faultsOf(box, leader, obstacles);
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
    const obstacles = nearTo(note, reaches.at(-1) ?? 0, all);
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

const obstaclesOf = (room: NoteRoom): Obstacles => ({
  room,
  runs: room.runs.map((run) => ({ run, box: grown(pieceBox(run.from, run.to), run.halfMm + airMm) })),
  marks: room.points.map((point) => ({ point, box: around(point, markMm) })),
});

/**
 * Finds a place for every note: none touches another, a text, a mark or a line, and leaders are short and cross little.
 * The most crowded choose first, then each in turn moves to the best place the others leave. A note that finds none may have
 * its leader run under another, then lie over a line; one that finds none even so is lost. Equal input gives equal places.
 */
export const placeNotes = (
  notes: readonly Note[],
  room: NoteRoom,
): { readonly placed: readonly PlacedNote[]; readonly strain: number; readonly lost: readonly string[] } => {
  const obstacles = obstaclesOf(room);
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
