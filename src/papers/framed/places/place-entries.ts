import { pathShape } from '../../drawing/marks.ts';
import type { Point } from '../../drawing/point.ts';
import { polyline } from '../../drawing/polyline.ts';
import type { Shape } from '../../drawing/shapes.ts';
import type { KnownBoat } from '../known-boat.ts';
import { sheetLines, sheetText } from '../sheet-text.ts';
import { type Entry, entryLabels, type Heading } from './place-facts.ts';
import { pictureLineMm, pictureLines } from './place-text.ts';

const arrowMm = 4;
const thin = { ink: 'ink', widthMm: 0.25 } as const;

/** The words of an entry in lines: which way, where it leads, what comes in by it. */
const entryLines = (known: KnownBoat, entry: Entry, widthMm: number): string[] => [
  ...sheetLines(entry.title, { ...sheetText.small, weight: 'semibold' }, widthMm),
  ...sheetLines(entry.leads, sheetText.small, widthMm),
  ...sheetLines(entryLabels(known, entry), sheetText.small, widthMm),
];

/** The mark where a way comes through the outline; for a way up or down the head or the tail of an arrow in a ring. */
const entryMark = (from: Point, to: Point, heading: Heading): Shape[] => {
  const stroke = pathShape(polyline([from, to]), { stroke: { ink: 'ink', widthMm: 0.6 } });
  if (heading !== 'up' && heading !== 'down') return [stroke];
  const [xMm, yMm] = to;
  const ring: Shape = { kind: 'circle', xMm, yMm, radiusMm: 1.3, stroke: thin, fill: 'paper' };
  const arm = 0.9;
  const sign: Shape =
    heading === 'up'
      ? { kind: 'circle', xMm, yMm, radiusMm: 0.45, fill: 'ink' }
      : pathShape(
          [
            ...polyline([
              [xMm - arm, yMm - arm],
              [xMm + arm, yMm + arm],
            ]),
            ...polyline([
              [xMm - arm, yMm + arm],
              [xMm + arm, yMm - arm],
            ]),
          ],
          { stroke: thin },
        );
  return [stroke, { kind: 'group', label: heading, shapes: [ring, sign] }];
};

/** The outline of a place on its sheet. */
export interface Outline {
  readonly leftMm: number;
  readonly topMm: number;
  readonly rightMm: number;
  readonly bottomMm: number;
}

/** Entries along the left or the right edge, one under the other. */
export const sideEntries = (
  known: KnownBoat,
  entries: readonly Entry[],
  { outline, side, sideMm }: { outline: Outline; side: 'aft' | 'forward'; sideMm: number },
): { shapes: Shape[]; bottomMm: number } => {
  const edgeMm = side === 'aft' ? outline.leftMm : outline.rightMm;
  const outMm = side === 'aft' ? edgeMm - arrowMm : edgeMm + arrowMm;
  const inMm = side === 'aft' ? edgeMm + 2 : edgeMm - 2;
  const textMm = side === 'aft' ? edgeMm - sideMm : edgeMm + arrowMm + 1;
  let topMm = outline.topMm + 1;
  const shapes = entries.flatMap((entry) => {
    const lines = entryLines(known, entry, sideMm - arrowMm - 1);
    const yMm = topMm + 1.4;
    const own = [
      ...entryMark([outMm, yMm], [inMm, yMm], entry.heading),
      ...pictureLines(lines, [textMm, topMm], [entry.way.id]),
    ];
    topMm += lines.length * pictureLineMm + 2;
    return own;
  });
  return { shapes, bottomMm: topMm };
};

/** The words of entries that stand side by side in a width. */
export const acrossLines = (known: KnownBoat, entries: readonly Entry[], widthMm: number): string[][] =>
  entries.map((entry) => entryLines(known, entry, widthMm / entries.length - 3));

/** How high they are with their marks. */
export const acrossHeightMm = (lines: readonly (readonly string[])[]): number =>
  lines.length === 0 ? 1 : Math.max(...lines.map((one) => one.length)) * pictureLineMm + arrowMm;

/** Entries along the upper or lower edge, side by side. */
export const acrossEntries = (
  entries: readonly Entry[],
  lines: readonly (readonly string[])[],
  { outline, side }: { outline: Outline; side: 'above' | 'below' },
): Shape[] => {
  const eachMm = (outline.rightMm - outline.leftMm) / Math.max(1, entries.length);
  return entries.flatMap((entry, at) => {
    const own = lines[at] ?? [];
    const leftMm = outline.leftMm + at * eachMm + 1;
    const edgeMm = side === 'above' ? outline.topMm : outline.bottomMm;
    const outMm = side === 'above' ? edgeMm - 3 : edgeMm + 3;
    const inMm = side === 'above' ? edgeMm + 2 : edgeMm - 2;
    const topMm = side === 'above' ? outMm - own.length * pictureLineMm - 0.4 : outMm + 0.6;
    const xMm = leftMm + 3;
    return [
      ...entryMark([xMm, outMm], [xMm, inMm], entry.heading),
      ...pictureLines(own, [leftMm, topMm], [entry.way.id]),
    ];
  });
};
