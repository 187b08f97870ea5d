import { pathShape } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import type { Shape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { wavyLine } from '../drawing/wavy-line.ts';
import type { SheetFrame } from './sheet-frame.ts';
import type { View } from './view.ts';

const words = { sizeMm: 2.95, face: 'words' } as const;
const longText = 'heights above this line are shortened';

/** Of the boat's length: before her mast, where the words stand. */
const clearShare = 0.4;

/** Where a tall mast is drawn shortened: a faint wave across the sky, which says so beside the boat's length. */
export const breakLine = (view: View, frame: SheetFrame): Shape[] => {
  if (frame.shortening >= 1) return [];
  const [middleMm, yMm] = view.point(0, frame.breakM);
  const halfMm = frame.centreMm - frame.top.topMm;
  const [fromMm, toMm] =
    view.name === 'astern' ? [middleMm - halfMm, middleMm + halfMm] : [frame.zeroMm, frame.zeroMm + frame.lengthMm];
  const line: Point[] = [
    [fromMm, yMm],
    [toMm, yMm],
  ];
  const wave = pathShape(wavyLine(line), { stroke: { ink: 'rule', widthMm: 0.2 } });
  if (view.name === 'astern') return [wave];
  return [
    wave,
    {
      kind: 'text',
      xMm: toMm,
      yMm: yMm - 1.6,
      text: textWidthMm(longText, words) < clearShare * frame.lengthMm ? longText : 'shortened above',
      ...words,
      anchor: 'end',
      ink: 'quiet',
    },
  ];
};
