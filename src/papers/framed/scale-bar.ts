import { pathShape } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { polygon, polyline, rectangle } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { sheetUnits } from '../sheet/sheet-units.ts';
import { sheetText } from './sheet-text.ts';

/** A bar no longer than this has room beside the title block of the smallest paper. */
const mostMm = 54;
const barMm = 1.3;

interface Bar {
  readonly inM: number;
  readonly word: string;
}

const bars: readonly Bar[] = [sheetUnits.metres, sheetUnits.feet];

/** The longest round length that fits, in units of the bar. */
const lengthOf = (mmPerUnit: number): number =>
  [100, 50, 20, 10, 5, 4, 2, 1].find((length) => length * mmPerUnit <= mostMm) ?? 0.5;

const barShapes = ({ inM, word }: Bar, mmPerM: number, [leftMm, topMm]: Point): Shape[] => {
  const mmPerUnit = inM * mmPerM;
  const length = lengthOf(mmPerUnit);
  const stepMm = (length * mmPerUnit) / 4;
  const cells = [0, 1, 2, 3].map((cell): Shape => {
    const box = { leftMm: leftMm + cell * stepMm, topMm, widthMm: stepMm, heightMm: barMm };
    return pathShape(rectangle(box), {
      stroke: { ink: 'ink', widthMm: 0.2 },
      fill: cell % 2 === 0 ? 'ink' : 'paper',
    });
  });
  return [
    ...cells,
    {
      kind: 'text',
      xMm: leftMm + 4 * stepMm + 1.4,
      yMm: topMm + barMm + 0.3,
      text: `${length} ${word}`,
      ...sheetText.small,
      ink: 'ink',
    },
  ];
};

/** The scale of a drawing as two bars, metres over feet, their top left corner at `at`. */
export const scaleBar = (mmPerM: number, at: Point): Shape => ({
  kind: 'group',
  label: 'scale bar',
  shapes: bars.flatMap((bar, row) => barShapes(bar, mmPerM, [at[0], at[1] + row * 4.4])),
});

const bowWords = 'bow';

/** An arrow that says where the bow is. */
export const bowArrow = ([leftMm, middleMm]: Point): Shape => {
  const fromMm = leftMm + textWidthMm(bowWords, sheetText.name) + 1.4;
  const tipMm = fromMm + 12;
  return {
    kind: 'group',
    label: 'bow to the right',
    shapes: [
      { kind: 'text', xMm: leftMm, yMm: middleMm + 0.9, text: bowWords, ...sheetText.name, ink: 'ink' },
      pathShape(
        polyline([
          [fromMm, middleMm],
          [tipMm - 2, middleMm],
        ]),
        { stroke: { ink: 'ink', widthMm: 0.5 } },
      ),
      pathShape(
        polygon([
          [tipMm, middleMm],
          [tipMm - 3.4, middleMm - 1.4],
          [tipMm - 3.4, middleMm + 1.4],
        ]),
        { fill: 'ink' },
      ),
    ],
  };
};
