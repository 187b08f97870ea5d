import { pathShape } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import type { Shape } from '../drawing/shapes.ts';
import { wavyLine } from '../drawing/wavy-line.ts';
import type { SheetFrame } from './sheet-frame.ts';
import type { View } from './view.ts';

const words = { sizeMm: 2.95, face: 'words' } as const;

/** Where a tall mast is drawn shortened: a faint wave across the sky that says so; nothing on a low boat. */
export const breakLine = (view: View, frame: SheetFrame): Shape[] => {
  if (frame.shortening >= 1) return [];
  const [, yMm] = view.point(0, frame.breakM);
  const line: Point[] = [
    [frame.zeroMm, yMm],
    [frame.zeroMm + frame.lengthMm, yMm],
  ];
  return [
    pathShape(wavyLine(line), { stroke: { ink: 'rule', widthMm: 0.2 } }),
    {
      kind: 'text',
      xMm: frame.zeroMm + frame.lengthMm,
      yMm: yMm - 1.6,
      text: frame.narrow ? 'shortened above' : 'heights above this line are shortened',
      ...words,
      anchor: 'end',
      ink: 'quiet',
    },
  ];
};
