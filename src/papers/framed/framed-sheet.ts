import { type SheetName, sheetSizes } from '../../core/facts/sheet-sizes.ts';
import { pathShape } from '../drawing/marks.ts';
import { moveShapes } from '../drawing/move-shapes.ts';
import { polyline, rectangle } from '../drawing/polyline.ts';
import type { Drawing, Shape } from '../drawing/shapes.ts';
import { bowArrow, scaleBar } from './scale-bar.ts';
import { type SheetArea, sheetArea } from './sheet-area.ts';
import { type TitleBlock, titleBlock, titleBlockMm, titleStripMm } from './title-block.ts';

/** One drawing before it has its frame: its shapes count from the top left corner of the room inside. */
export interface SheetContent {
  readonly title: string;
  /** ids of what the sheet shows */
  readonly about: readonly string[];
  readonly shapes: readonly Shape[];
  /** how many millimetres on the paper stand for a metre aboard, where the sheet is to scale */
  readonly mmPerM?: number;
  /** whether the bow is to the right on it */
  readonly isAlong?: boolean;
}

/** Short strokes at the edges where a large sheet is folded to half its size. */
const foldMarks = ({ widthMm, heightMm }: SheetArea): Shape[] =>
  [
    [0, 4],
    [heightMm - 4, heightMm],
  ].map(([fromMm = 0, toMm = 0]) =>
    pathShape(
      polyline([
        [widthMm / 2, fromMm],
        [widthMm / 2, toMm],
      ]),
      { stroke: { ink: 'ink', widthMm: 0.25 } },
    ),
  );

const isFolded = (paper: SheetName): boolean => sheetSizes[paper].widthMm > 400;

/** "1:50"; a scale that is no whole number has one digit behind the point. */
const scaleWords = (mmPerM: number): string => `1:${Number((1000 / mmPerM).toFixed(1))}`;

/** What the binder says on every sheet; its own number besides. */
export type SheetBlock = Omit<TitleBlock, 'title' | 'scale' | 'paper'>;

/** A drawing in its frame: border for binding, fold marks, title block, scale bar and bow arrow where they belong. */
export const framedSheet = (content: SheetContent, paper: SheetName, block: SheetBlock): Drawing => {
  const area = sheetArea(paper);
  const { frame } = area;
  const stripTopMm = frame.topMm + frame.heightMm - titleStripMm;
  const { mmPerM } = content;
  const title: TitleBlock = {
    ...block,
    title: content.title,
    paper: sheetSizes[paper].words,
    ...(mmPerM === undefined ? {} : { scale: scaleWords(mmPerM) }),
  };
  return {
    title: `${block.boat}: ${content.title}`,
    widthMm: area.widthMm,
    heightMm: area.heightMm,
    shapes: [
      pathShape(rectangle(frame), { stroke: { ink: 'ink', widthMm: 0.5 } }),
      ...(isFolded(paper) ? foldMarks(area) : []),
      ...(mmPerM === undefined ? [] : [scaleBar(mmPerM, [frame.leftMm + 3, stripTopMm + 4.4])]),
      ...(content.isAlong === true ? [bowArrow([frame.leftMm + 68, stripTopMm + 7.5])] : []),
      titleBlock(title, [frame.leftMm + frame.widthMm - titleBlockMm, stripTopMm]),
      {
        kind: 'group',
        label: content.title,
        shapes: moveShapes(content.shapes, { xMm: area.content.leftMm, yMm: area.content.topMm }),
      },
    ],
  };
};
