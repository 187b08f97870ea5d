import type { Shape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { flowRows } from './flow-rows.ts';
import type { UnitMark } from './unit-marks.ts';

/** Height of one row of the list. */
export const numberRowMm = 4.2;

const edgeMm = 5;
const words = { sizeMm: 2.95, face: 'words' } as const;
const figures = { ...words, weight: 'semibold' } as const;

/** Space between a number and its words. */
const spaceMm = 1.1;

/** Numbers that found no room for words on the drawing, with their words, so that none stays unexplained. */
export const numberKey = ({
  marks,
  widthMm,
  topMm,
}: {
  marks: readonly UnitMark[];
  widthMm: number;
  topMm: number;
}): { shape: Shape; heightMm: number } => {
  const numberMm = (mark: UnitMark): number => textWidthMm(String(mark.number), figures) + spaceMm;
  const spots = flowRows(
    marks.map((mark) => numberMm(mark) + textWidthMm(mark.told, words)),
    { fromMm: edgeMm, toMm: widthMm - edgeMm, gapMm: 4 },
  );
  const shapes = marks.flatMap((mark, order): Shape[] => {
    const { xMm, row } = spots[order] ?? { xMm: edgeMm, row: 0 };
    const yMm = topMm + row * numberRowMm + 3;
    const ink = mark.findings.length > 0 ? 'accent' : 'ink';
    return [
      { kind: 'text', xMm, yMm, text: String(mark.number), ...figures, ink, about: mark.about },
      { kind: 'text', xMm: xMm + numberMm(mark), yMm, text: mark.told, ...words, ink: 'quiet', about: mark.about },
    ];
  });
  const rows = (spots.at(-1)?.row ?? -1) + 1;
  return { shape: { kind: 'group', label: 'other numbers', shapes }, heightMm: rows * numberRowMm };
};
