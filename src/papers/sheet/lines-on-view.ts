import { type Box, grown, overlaps, textBox } from '../drawing/box.ts';
import { arrowHead } from '../drawing/marks.ts';
import { between, direction, distanceMm, type Point, stepFrom } from '../drawing/point.ts';
import { partOf, polylineLengthMm } from '../drawing/polyline.ts';
import type { Shape, TextShape } from '../drawing/shapes.ts';
import { codedStrokes } from './coded-strokes.ts';
import type { DrawnBoat } from './drawn-boat.ts';
import type { View } from './view.ts';
import type { Lane, WayBundle } from './way-bundles.ts';

/** A straight run of lines that nothing may cover; half its width to either side. */
export interface Run {
  readonly from: Point;
  readonly to: Point;
  readonly halfMm: number;
}

export interface LinesOnView {
  readonly shapes: readonly Shape[];
  readonly runs: readonly Run[];
}

/** Air between two strokes of a bundle. */
const airMm = 0.5;

/** Half of what a wave adds to a stroke. */
const waveMm = 0.5;

/** Shorter than this in a view, a way is seen end on and not drawn. */
const leastRunMm = 1;

/** Lanes leave a place together and spread within this length. */
const spreadMm = 2.2;

/** A way shorter than this has no room for letters. */
const letteredMm = 13;

/** A letter is as wide as this. */
const letterWideMm = 2.4;

const footprintMm = (lane: Lane, { guessed, lettered }: { guessed: boolean; lettered: boolean }): number =>
  lettered && lane.code.letter !== undefined
    ? letterWideMm
    : lane.code.widthMm + (lane.code.doubleMm ?? 0) + (guessed ? waveMm : 0) + airMm;

/** How far from the middle of the bundle each of its strokes runs, and how wide the bundle is. */
const acrossOf = (
  lanes: readonly Lane[],
  look: { guessed: boolean; lettered: boolean },
): { across: number[]; wideMm: number } => {
  let atMm = 0;
  const middles = lanes.map((lane) => {
    const wide = footprintMm(lane, look);
    atMm += wide;
    return atMm - wide / 2;
  });
  return { across: middles.map((middle) => middle - atMm / 2), wideMm: atMm };
};

const laneLine = (from: Point, to: Point, acrossMm: number): Point[] => {
  const heading = direction(from, to);
  const lengthMm = distanceMm(from, to);
  const lead = Math.min(spreadMm, lengthMm / 3);
  return [
    from,
    stepFrom(from, heading, { alongMm: lead, acrossMm }),
    stepFrom(from, heading, { alongMm: lengthMm - lead, acrossMm }),
    to,
  ];
};

const strokes = (line: readonly Point[], lane: Lane, guessed: boolean): Shape[] =>
  codedStrokes(line, { code: lane.code, guessed, about: lane.about });

const arrows = (line: readonly Point[], lane: Lane): Shape[] => {
  const [, near, far] = line;
  if (near === undefined || far === undefined) return [];
  const heading = direction(near, far);
  const against: Point = [-heading[0], -heading[1]];
  const look = { ink: lane.code.ink, about: lane.about };
  return lane.talks.map((side) =>
    side === 'along'
      ? arrowHead(between(near, far, 0.92), heading, look)
      : arrowHead(between(near, far, 0.08), against, look),
  );
};

const letterMm = 2.92;
const letterAirMm = 2;
const letterPlaces = [0.5, 0.38, 0.62, 0.27, 0.73];

/** Places the letter of a line in a gap of its stroke, where no other text stands. */
const withLetter = (
  line: readonly Point[],
  lane: Lane,
  taken: readonly Box[],
): { text: TextShape; atMm: number } | undefined => {
  const { letter, ink } = lane.code;
  const lengthMm = polylineLengthMm(line);
  const [, near, far] = line;
  if (letter === undefined || near === undefined || far === undefined || lengthMm < letteredMm) return undefined;
  for (const share of letterPlaces) {
    const at = between(near, far, share);
    const text: TextShape = {
      kind: 'text',
      xMm: at[0],
      yMm: at[1] + letterMm * 0.34,
      text: letter,
      sizeMm: letterMm,
      face: 'words',
      weight: 'semibold',
      anchor: 'middle',
      ink,
      about: lane.about,
    };
    if (taken.some((box) => overlaps(box, grown(textBox(text), letterAirMm)))) continue;
    return { text, atMm: distanceMm(line[0] ?? near, near) + distanceMm(near, at) };
  }
  return undefined;
};

const laneShapes = (line: readonly Point[], lane: Lane, drawn: { guessed: boolean; taken: Box[] }): Shape[] => {
  const lettered = withLetter(line, lane, drawn.taken);
  if (lettered === undefined) return [...strokes(line, lane, drawn.guessed), ...arrows(line, lane)];
  drawn.taken.push(textBox(lettered.text));
  const gapMm = 1.9;
  const lengthMm = polylineLengthMm(line);
  return [
    ...strokes(partOf(line, { fromMm: 0, toMm: lettered.atMm - gapMm }), lane, drawn.guessed),
    ...strokes(partOf(line, { fromMm: lettered.atMm + gapMm, toMm: lengthMm }), lane, drawn.guessed),
    ...arrows(line, lane),
    lettered.text,
  ];
};

/** Thick strokes last, so that the trunk lies over what it crosses; leaving cables first. */
const weight = (lane: Lane): number => (lane.leaving ? -1 : lane.code.widthMm);

/** The lines of every way drawn straight between its places, side by side where they share one. */
export const linesOnView = ({
  view,
  bundles,
  index,
}: {
  view: View;
  bundles: readonly WayBundle[];
  index: DrawnBoat;
}): LinesOnView => {
  const taken: Box[] = [];
  const runs: Run[] = [];
  const drawn: { weight: number; shapes: Shape[] }[] = [];
  for (const { way, lanes, guessed } of bundles) {
    const ends = way.ends.map((end) => index.places.get(end));
    const [first, last] = ends;
    if (first === undefined || last === undefined) continue;
    const from = view.at(first);
    const to = view.at(last);
    if (distanceMm(from, to) < leastRunMm) continue;
    const { across, wideMm } = acrossOf(lanes, { guessed, lettered: distanceMm(from, to) >= letteredMm });
    runs.push({ from, to, halfMm: wideMm / 2 });
    for (const [order, lane] of lanes.entries()) {
      const line = laneLine(from, to, across[order] ?? 0);
      drawn.push({ weight: weight(lane), shapes: laneShapes(line, lane, { guessed, taken }) });
    }
  }
  drawn.sort((a, b) => a.weight - b.weight);
  return { shapes: drawn.flatMap((entry) => entry.shapes), runs };
};
