import { balloon, pathShape } from '../../drawing/marks.ts';
import type { Point } from '../../drawing/point.ts';
import { polyline, rectangle } from '../../drawing/polyline.ts';
import type { Shape } from '../../drawing/shapes.ts';
import { textWidthMm } from '../../drawing/text-width.ts';
import { fewLines, sheetLines, sheetText } from '../sheet-text.ts';
import type { BoxRow, PlaceBox } from './place-facts.ts';
import { type PictureRoom, pictureLineMm, pictureText } from './place-text.ts';

/** Three figures want a larger balloon. */
const radiusOf = (number: number): number => (number > 99 ? 2.6 : 2.1);

const rowLines = ({ words }: BoxRow, widthMm: number, keyMm: number): string[] =>
  sheetLines(words, sheetText.small, widthMm - keyMm - 2);

const boxKeyMm = ({ rows }: PlaceBox): number =>
  Math.max(0, ...rows.map(({ label = '' }) => textWidthMm(label, sheetText.label))) + 1.4;

const headLines = ({ name, mark }: PlaceBox, widthMm: number): string[] =>
  fewLines(name, sheetText.name, { widthMm: widthMm - 2 - (mark === undefined ? 0 : 6), most: 2 });

const headMm = (box: PlaceBox, widthMm: number): number => Math.max(5.4, headLines(box, widthMm).length * 3.3 + 1.8);

/** How high a box of a width is. */
export const boxHeightMm = (box: PlaceBox, widthMm: number): number =>
  headMm(box, widthMm) +
  box.rows.reduce(
    (sum, row) => sum + Math.max(1, rowLines(row, widthMm, boxKeyMm(box)).length) * pictureLineMm + 0.6,
    0.8,
  );

const boxShapes = (box: PlaceBox, [leftMm, topMm]: Point, widthMm: number): Shape[] => {
  const { mark, about } = box;
  const keyMm = boxKeyMm(box);
  const underMm = topMm + headMm(box, widthMm);
  let rowTopMm = underMm + 0.5;
  const rows = box.rows.flatMap((row): Shape[] => {
    const lines = rowLines(row, widthMm, keyMm);
    const yMm = rowTopMm + 2.3;
    rowTopMm += Math.max(1, lines.length) * pictureLineMm + 0.6;
    return [
      ...(row.label === undefined
        ? []
        : [pictureText(row.label, [leftMm + 1, yMm], { ...sheetText.label, about: row.about })]),
      ...lines.map((line, at) =>
        pictureText(line, [leftMm + 1 + keyMm, yMm + at * pictureLineMm], { about: row.about }),
      ),
    ];
  });
  const nameMm = leftMm + 1 + (mark === undefined ? 0 : 6);
  return [
    pathShape(rectangle({ leftMm, topMm, widthMm, heightMm: boxHeightMm(box, widthMm) }), {
      stroke: { ink: 'ink', widthMm: 0.35 },
      fill: 'paper',
      about,
    }),
    pathShape(
      polyline([
        [leftMm, underMm],
        [leftMm + widthMm, underMm],
      ]),
      { stroke: { ink: 'ink', widthMm: 0.15 } },
    ),
    ...(mark === undefined
      ? []
      : balloon([leftMm + 3.4, topMm + 2.7], {
          number: mark.number,
          radiusMm: radiusOf(mark.number),
          // what was found stands in the findings; here a filled number would only raise the question
          filled: false,
          about,
        })),
    ...headLines(box, widthMm).map((line, at) =>
      pictureText(line, [nameMm, topMm + 3.5 + at * 3.3], { ...sheetText.name, about }),
    ),
    ...rows,
  ];
};

const leastBoxMm = 44;
const gapMm = 2.5;

const widestBoxMm = 88;

/** Boxes in so many columns; those that find no room are left over. */
const inColumns = (
  boxes: readonly PlaceBox[],
  room: PictureRoom,
  count: number,
): { shapes: Shape[]; rest: PlaceBox[] } => {
  const widthMm = Math.min(widestBoxMm, (room.widthMm - gapMm * (count - 1)) / count);
  const shapes: Shape[] = [];
  let column = 0;
  let atMm = 0;
  for (const [order, box] of boxes.entries()) {
    const heightMm = boxHeightMm(box, widthMm);
    if (atMm > 0 && atMm + heightMm > room.heightMm) {
      column += 1;
      atMm = 0;
    }
    if (column === count || heightMm > room.heightMm) return { shapes, rest: boxes.slice(order) };
    shapes.push(...boxShapes(box, [room.leftMm + column * (widthMm + gapMm), room.topMm + atMm], widthMm));
    atMm += heightMm + gapMm;
  }
  return { shapes, rest: [] };
};

/** Boxes in the fewest columns in which all find room, else in as many as there can be. */
export const setBoxes = (boxes: readonly PlaceBox[], room: PictureRoom): { shapes: Shape[]; rest: PlaceBox[] } => {
  const most = Math.max(1, Math.floor((room.widthMm + gapMm) / (leastBoxMm + gapMm)));
  for (let count = 1; count < most; count++) {
    const set = inColumns(boxes, room, count);
    if (set.rest.length === 0) return set;
  }
  return inColumns(boxes, room, most);
};
