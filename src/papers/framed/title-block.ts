import { pathShape } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { polyline, rectangle } from '../drawing/polyline.ts';
import type { Shape, Stroke } from '../drawing/shapes.ts';
import { fewLines, sheetText } from './sheet-text.ts';

/** What the title block of a sheet says. */
export interface TitleBlock {
  readonly boat: string;
  readonly title: string;
  readonly sheet: number;
  readonly of: number;
  /** absent before the first revision is issued */
  readonly revision?: string;
  readonly standing: 'as planned' | 'as fitted';
  /** YYYY-MM-DD */
  readonly dateIso?: string;
  /** the scale as a person writes it, such as 1:50; absent where nothing is to scale */
  readonly scale?: string;
  /** the paper the scale holds on */
  readonly paper: string;
}

/** Height of the strip at the foot of a sheet that holds the title block. */
export const titleStripMm = 15;
/** Width of the title block. */
export const titleBlockMm = 163;

const line: Stroke = { ink: 'ink', widthMm: 0.25 };

/** The columns of the block, each with its fields from top to bottom: what it is, and its value. */
const columnsOf = (block: TitleBlock): { widthMm: number; fields: readonly (readonly [string, string])[] }[] => [
  {
    widthMm: 31,
    fields: [
      ['standing', block.standing],
      ['revision', block.revision ?? 'none issued'],
    ],
  },
  {
    widthMm: 25,
    fields: [
      ['date', block.dateIso ?? 'not dated'],
      ['scale', block.scale === undefined ? 'not to scale' : block.scale],
    ],
  },
  {
    widthMm: 25,
    fields: [
      ['sheet', `${block.sheet} of ${block.of}`],
      ['paper', block.paper],
    ],
  },
];

const fieldShapes = ([caption, value]: readonly [string, string], [xMm, yMm]: Point): Shape[] => [
  { kind: 'text', xMm: xMm + 1.2, yMm: yMm + 2.7, text: caption, ...sheetText.small, ink: 'quiet' },
  { kind: 'text', xMm: xMm + 1.2, yMm: yMm + 6.2, text: value, ...sheetText.name, ink: 'ink' },
];

/** The title block, its top left corner at `at`: boat and title, how it stands, revision, date, scale, sheet and paper. */
export const titleBlock = (block: TitleBlock, at: Point): Shape => {
  const [leftMm, topMm] = at;
  const columns = columnsOf(block);
  const nameMm = titleBlockMm - columns.reduce((sum, { widthMm }) => sum + widthMm, 0);
  const title = fewLines(block.title, sheetText.plain, { widthMm: nameMm - 2.6, most: 2 });
  const [boat = ''] = fewLines(block.boat, sheetText.head, { widthMm: nameMm - 2.6, most: 1 });
  let xMm = leftMm + nameMm;
  const fields = columns.flatMap((column): Shape[] => {
    const fromMm = xMm;
    xMm += column.widthMm;
    return [
      pathShape(
        polyline([
          [fromMm, topMm],
          [fromMm, topMm + titleStripMm],
        ]),
        { stroke: line },
      ),
      ...column.fields.flatMap((field, row) => fieldShapes(field, [fromMm, topMm + (row * titleStripMm) / 2])),
    ];
  });
  return {
    kind: 'group',
    label: 'title block',
    shapes: [
      pathShape(rectangle({ leftMm, topMm, widthMm: titleBlockMm, heightMm: titleStripMm }), {
        stroke: { ink: 'ink', widthMm: 0.5 },
        fill: 'paper',
      }),
      pathShape(
        polyline([
          [leftMm + nameMm, topMm + titleStripMm / 2],
          [leftMm + titleBlockMm, topMm + titleStripMm / 2],
        ]),
        { stroke: line },
      ),
      ...fields,
      { kind: 'text', xMm: leftMm + 1.3, yMm: topMm + 4.2, text: boat, ...sheetText.head, ink: 'ink' },
      ...title.map(
        (text, row): Shape => ({
          kind: 'text',
          xMm: leftMm + 1.3,
          yMm: topMm + 8.6 + row * 3.6,
          text,
          ...sheetText.plain,
          ink: 'ink',
        }),
      ),
    ],
  };
};
