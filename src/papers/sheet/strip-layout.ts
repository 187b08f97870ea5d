import { textWidthMm } from '../drawing/text-width.ts';
import type { DrawnBoat } from './drawn-boat.ts';
import type { SheetFrame } from './sheet-frame.ts';
import { figureIn, type SheetUnits } from './sheet-units.ts';
import { spread } from './spread.ts';
import type { Stretch, StripNode, StripOfBus } from './strip-nodes.ts';
import { type NodeWords, nodeWords, type StandingNode, stripFigures, stripLineMm } from './strip-words.ts';

/** Length of a drop as drawn, and size of its balloon. */
export const dropMm = 8.4;
export const radiusMm = 2.6;

/** A node with its place on the sheet and what is written at it. */
export type PlacedNode = StandingNode & NodeWords;

export interface PlacedStrip {
  readonly strip: StripOfBus;
  readonly nodes: readonly PlacedNode[];
  readonly stretchWords: boolean;
  /** room over and under the trunk */
  readonly aboveMm: number;
  readonly belowMm: number;
}

const endGapMm = 4.8;

/** Beside a feed, so that its figures stand clear of the balloons two tees away. */
const feedGapMm = 5.6;

const edgeMm = 10;
const leastPitchMm = 3.4;

/** Wishes for the pitch between tees, from roomy to tight, first with the lengths of the stretches written. */
const pitches = [
  ...[10, 9, 8, 7, 6, 5].map((pitchMm) => ({ pitchMm, words: true })),
  ...[5, 4.2, leastPitchMm].map((pitchMm) => ({ pitchMm, words: false })),
];

/** What is written over a stretch of trunk. */
export const stretchText = (stretch: Pick<Stretch, 'lengthM' | 'label'>, units: SheetUnits): string => {
  const length = `${figureIn(units, stretch.lengthM)} ${units.word}`;
  return stretch.label === undefined ? length : `${stretch.label} ${length}`;
};

const gapsOf = (strip: StripOfBus, { pitchMm, words }: { pitchMm: number; words: boolean }): number[] => {
  const stretchAfter = new Map(strip.stretches.map((stretch) => [stretch.afterNode, stretch]));
  return strip.nodes.map((node, at) => {
    const before = strip.nodes[at - 1];
    const stretch = stretchAfter.get(at - 1);
    if (stretch !== undefined) {
      const leastMm = Math.max(pitchMm, before?.kind === 'feed' || node.kind === 'feed' ? feedGapMm : 0);
      return words ? Math.max(leastMm, textWidthMm(stretchText(stretch, strip.units), stripFigures) + 4.4) : leastMm;
    }
    if (before?.kind === 'end' || node.kind === 'end') return endGapMm;
    return before?.kind === 'feed' || node.kind === 'feed' ? Math.max(pitchMm, feedGapMm) : pitchMm;
  });
};

const total = (gaps: readonly number[]): number => gaps.slice(1).reduce((sum, gap) => sum + gap, 0);

/** The least width a sheet needs for this strip at its tightest. */
export const leastStripMm = (strip: StripOfBus): number =>
  total(gapsOf(strip, { pitchMm: leastPitchMm, words: false })) + 2 * edgeMm;

/** Sides alternate along the trunk, so counted that the feed comes from above. */
const sidesOf = (nodes: readonly StripNode[]): boolean[] => {
  const tees = nodes.filter((node) => node.kind !== 'end');
  const feedAt = tees.findIndex((node) => node.kind === 'feed');
  const upAt = Math.max(feedAt, 0) % 2;
  return nodes.map((node) => node.kind === 'end' || tees.indexOf(node) % 2 === upAt);
};

/** How far past bow and stern a strip may reach when it has room to choose. */
const overhangMm = 28;

/** A strip stays near the boat on a wide sheet, as long as it fits there. */
const stripRoom = ({
  frame,
  sheet,
  leastMm,
}: {
  frame: SheetFrame;
  sheet: { fromMm: number; toMm: number };
  leastMm: number;
}): { fromMm: number; toMm: number } => {
  const fromMm = Math.max(sheet.fromMm, frame.zeroMm - overhangMm);
  const toMm = Math.min(sheet.toMm, frame.zeroMm + frame.lengthMm + overhangMm);
  return toMm - fromMm >= leastMm ? { fromMm, toMm } : sheet;
};

/** Gives every node its x: under its place of the boat where the trunk runs along her, else by metres along the trunk. */
export const layStrip = ({
  strip,
  frame,
  index,
}: {
  strip: StripOfBus;
  frame: SheetFrame;
  index: DrawnBoat;
}): PlacedStrip => {
  const sheet = { fromMm: edgeMm, toMm: frame.widthMm - edgeMm };
  const choice = pitches.find((pitch) => total(gapsOf(strip, pitch)) <= sheet.toMm - sheet.fromMm) ?? {
    pitchMm: leastPitchMm,
    words: false,
  };
  const gaps = gapsOf(strip, choice);
  const room = stripRoom({ frame, sheet, leastMm: total(gaps) });
  const roomMm = room.toMm - room.fromMm;
  const totalM = Math.max(strip.nodes.at(-1)?.alongM ?? 0, 0.001);
  const wish = (node: StripNode): number =>
    strip.order === 'axis'
      ? frame.zeroMm + (index.places.get(node.place)?.xM ?? 0) * frame.mmPerM
      : room.fromMm + (node.alongM / totalM) * roomMm;
  const xs = spread(
    strip.nodes.map((node, at) => ({ wishMm: wish(node), gapMm: gaps[at] ?? 0 })),
    room,
  );
  const sides = sidesOf(strip.nodes);
  const standing = strip.nodes.map((node, at): StandingNode => ({ ...node, xMm: xs[at] ?? 0, up: sides[at] ?? true }));
  const nodes = standing.map((node) => ({
    ...node,
    ...nodeWords(node, standing, { sheetMm: frame.widthMm, units: strip.units }),
  }));
  const lines = (up: boolean): number =>
    Math.max(1, ...nodes.filter((node) => node.up === up).map((node) => node.words.length));
  const stems = {
    aboveMm: dropMm + 2 * radiusMm + lines(true) * stripLineMm + 2,
    belowMm: dropMm + 2 * radiusMm + lines(false) * stripLineMm + 2,
  };
  return { strip, nodes, stretchWords: choice.words, ...stems };
};
