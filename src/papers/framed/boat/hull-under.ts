import { hullPattern } from '../../../core/facts/hull-patterns.ts';
import { type Box, grown, insideMm, textBox } from '../../drawing/box.ts';
import { clipShapes } from '../../drawing/clip-shapes.ts';
import { flattenPath } from '../../drawing/flatten-path.ts';
import { pathShape } from '../../drawing/marks.ts';
import type { Point } from '../../drawing/point.ts';
import { polyline } from '../../drawing/polyline.ts';
import type { Shape, TextShape } from '../../drawing/shapes.ts';
import { textWidthMm } from '../../drawing/text-width.ts';
import { wavyLine } from '../../drawing/wavy-line.ts';
import { hullOnView } from '../../sheet/hull-on-view.ts';
import type { SoftLine } from '../../sheet/label-room.ts';
import type { Run } from '../../sheet/lines-on-view.ts';
import { onView } from '../../sheet/view.ts';
import type { KnownBoat } from '../known-boat.ts';
import { sheetText } from '../sheet-text.ts';
import type { WindowView } from './window-view.ts';

/** A word on a level across the view, where it meets no line; at its left end where it meets some everywhere. */
const levelWord = (text: string, yMm: number, { box, runs }: { box: Box; runs: readonly Run[] }): TextShape => {
  const widthMm = textWidthMm(text, sheetText.small);
  const free = box.rightMm - box.leftMm - widthMm - 2;
  const at = (share: number): TextShape => ({
    kind: 'text',
    xMm: box.leftMm + 1 + share * free,
    yMm,
    text,
    ...sheetText.small,
    ink: 'quiet',
  });
  const isClear = (shape: TextShape): boolean =>
    runs.every(({ from, to, halfMm }) => insideMm(grown(textBox(shape), halfMm + 0.6), from, to) === 0);
  return [0, 1, 0.5, 0.25, 0.75].map(at).find(isClear) ?? at(0);
};

/** The waterline, and where masts are drawn shortened. */
const levels = (view: WindowView, box: Box, runs: readonly Run[]): Shape[] => {
  if (view.name === 'top') return [];
  const across = (yMm: number): Point[] => [
    [box.leftMm, yMm],
    [box.rightMm, yMm],
  ];
  const [, waterMm] = view.point(0, 0);
  const water = [
    pathShape(polyline(across(waterMm)), { stroke: { ink: 'quiet', widthMm: 0.18, dashMm: [4, 1, 0.6, 1] } }),
    levelWord('waterline', waterMm - 0.9, { box, runs }),
  ];
  const { shortening } = view;
  if (shortening === 1) return water;
  const [, breakMm] = view.point(0, view.span.reach.breakM);
  const text = `heights above this line are drawn at ${Math.round(shortening * 100)} % of the scale`;
  const shown = textWidthMm(text, sheetText.small) < box.rightMm - box.leftMm - 4 ? text : 'shortened above';
  return [
    ...water,
    pathShape(wavyLine(across(breakMm)), { stroke: { ink: 'quiet', widthMm: 0.18 } }),
    levelWord(shown, breakMm - 1.2, { box, runs }),
  ];
};

/** What a millimetre of each of the boat's own lines under a note costs: words read badly over them. */
export const softLines = (known: KnownBoat, view: WindowView): SoftLine[] =>
  hullPattern(known.boat.hull)
    [view.name === 'astern' ? 'side' : view.name].filter(({ role }) => role === 'hull' || role === 'house')
    .flatMap((part) =>
      flattenPath(part.steps.map((step) => onView(view, step))).map(
        ([from, to]): SoftLine => ({ from, to, costPerMm: 0.5 }),
      ),
    );

/** What lies under everything in a window: the boat's own lines up to its edges, the waterline, where masts are shortened. */
export const hullUnder = (known: KnownBoat, view: WindowView, box: Box, runs: readonly Run[]): Shape[] => [
  ...clipShapes(hullOnView(view, hullPattern(known.boat.hull)[view.name === 'astern' ? 'side' : view.name]), box),
  ...levels(view, box, runs),
];
