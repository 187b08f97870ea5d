import type { Progress } from '../../core/work/progress.ts';
import { pathShape } from '../drawing/marks.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Drawing, Shape } from '../drawing/shapes.ts';
import { progressRows } from './progress-words.ts';

const rowMm = 8;
const [leftMm, markMm] = [2, 1.3];

/** A lead line with its marks: let out as far as the work has come. */
const leadLine = (yMm: number, widthMm: number, share: number): Shape[] => {
  const atMm = leftMm + (widthMm - 2 * leftMm) * share;
  const tenths = Array.from({ length: 11 }, (_, at) => leftMm + ((widthMm - 2 * leftMm) * at) / 10);
  return [
    pathShape(
      [
        ...polyline([
          [leftMm, yMm],
          [widthMm - leftMm, yMm],
        ]),
        ...tenths.flatMap((xMm) =>
          polyline([
            [xMm, yMm - 0.9],
            [xMm, yMm + 0.9],
          ]),
        ),
      ],
      { stroke: { ink: 'quiet', widthMm: 0.2 } },
    ),
    pathShape(
      polyline([
        [leftMm, yMm],
        [atMm, yMm],
      ]),
      { stroke: { ink: 'ink', widthMm: 1 } },
    ),
    {
      kind: 'circle',
      xMm: atMm,
      yMm,
      radiusMm: markMm,
      stroke: { ink: 'ink', widthMm: 0.4 },
      fill: share >= 1 ? 'ink' : 'paper',
    },
  ];
};

/** How far jobs, cables and readings have come, a line each. */
export const progressPicture = (progress: Progress, widthMm: number): Drawing => {
  const rows = progressRows(progress).filter(({ part }) => part.total > 0);
  return {
    title: rows.map(({ says }) => says).join(', '),
    widthMm,
    heightMm: Math.max(1, rows.length) * rowMm,
    shapes: rows.flatMap(({ says, part }, at): Shape[] => [
      { kind: 'text', text: says, xMm: leftMm, yMm: at * rowMm + 3.2, sizeMm: 3.2, face: 'words', ink: 'ink' },
      ...leadLine(at * rowMm + 5.8, widthMm, part.done / part.total),
    ]),
  };
};
