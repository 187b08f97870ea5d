import { balloon, pathShape } from '../../drawing/marks.ts';
import { distanceMm, type Point } from '../../drawing/point.ts';
import { rectangle } from '../../drawing/polyline.ts';
import type { Shape } from '../../drawing/shapes.ts';
import { textWidthMm } from '../../drawing/text-width.ts';
import type { UnitMark } from '../../sheet/unit-marks.ts';
import { type DrawnNote, isMirrored } from '../boat/window-notes.ts';
import type { NoteForm, PlacedNote } from '../place-notes.ts';
import { sheetLines, sheetText } from '../sheet-text.ts';

/** A unit with what is written beside its balloon, a line each. */
export interface UnitWords {
  readonly mark: UnitMark;
  readonly lines: readonly string[];
}

/** Three figures want a larger balloon. */
const radiusOf = ({ number }: UnitMark): number => (number > 99 ? 2.6 : 2.1);
const mostRadiusMm = 2.6;
const rowMm = 5.4;
const lineMm = 3.1;
const indentMm = 6;
const widestMm = 46;
/** Not to write the words costs so much leader. */
const numbersOnlyMm = 45;

const styleOf = (row: number) => (row === 0 ? sheetText.name : sheetText.small);

const wrapped = ({ lines }: UnitWords): string[] =>
  lines.flatMap((line, at) => sheetLines(line, styleOf(at), widestMm));

const heightOf = (unit: UnitWords): number => Math.max(rowMm, wrapped(unit).length * lineMm + 1.6);

const formOf = (units: readonly UnitWords[]): NoteForm => ({
  widthMm:
    indentMm + Math.max(...units.flatMap((unit) => wrapped(unit).map((line) => textWidthMm(line, sheetText.name)))),
  heightMm: units.reduce((sum, unit) => sum + heightOf(unit), 0),
  costMm: 0,
  hookMm: mostRadiusMm,
});

const numbersForm = (units: readonly UnitWords[]): NoteForm => ({
  widthMm: units.length * (2 * mostRadiusMm + 0.4),
  heightMm: rowMm,
  costMm: numbersOnlyMm,
});

const balloonAt = ({ mark }: UnitWords, at: Point): Shape => ({
  kind: 'group',
  label: `${mark.number}, ${mark.kit.name}`,
  about: mark.about,
  shapes: balloon(at, { number: mark.number, radiusMm: radiusOf(mark), filled: false, about: mark.about }),
});

/** Balloons side by side without words. */
const numberCentres = (units: readonly UnitWords[], { box }: PlacedNote): Point[] =>
  units.map((_, order) => [box.leftMm + mostRadiusMm + order * (2 * mostRadiusMm + 0.4), box.topMm + rowMm / 2]);

/** Balloons under each other, on the side of the note that looks to its anchor. */
const rowCentres = (units: readonly UnitWords[], placed: PlacedNote): Point[] => {
  const { leftMm, rightMm, topMm } = placed.box;
  let atMm = topMm;
  return units.map((unit) => {
    const fromMm = atMm;
    atMm += heightOf(unit);
    return [isMirrored(placed) ? rightMm - mostRadiusMm : leftMm + mostRadiusMm, fromMm + rowMm / 2];
  });
};

const wordsShapes = (unit: UnitWords, centre: Point, isRight: boolean): Shape[] => {
  const xMm = centre[0] + (isRight ? mostRadiusMm - indentMm : indentMm - mostRadiusMm);
  const topMm = centre[1] - rowMm / 2;
  const lines = wrapped(unit);
  return [
    // all paper first: that of a line must not cut the tails of the one above
    ...lines.map((text, row) => {
      const widthMm = textWidthMm(text, styleOf(row));
      const leftMm = isRight ? xMm - widthMm : xMm;
      return pathShape(rectangle({ leftMm, topMm: topMm + 0.6 + row * lineMm, widthMm, heightMm: lineMm }), {
        fill: 'paper',
      });
    }),
    ...lines.map(
      (text, row): Shape => ({
        kind: 'text',
        xMm,
        yMm: topMm + 3.5 + row * lineMm,
        text,
        ...styleOf(row),
        ...(isRight ? { anchor: 'end' as const } : {}),
        ink: 'ink',
        about: unit.mark.about,
      }),
    ),
  ];
};

/** The note of the units at one place: a balloon each with its words, or the balloons alone where there is no room. */
export const unitsNote = (id: string, units: readonly UnitWords[], at: Point): DrawnNote => {
  const isBare = ({ form }: PlacedNote): boolean => form === 1;
  const centresOf = (placed: PlacedNote): Point[] =>
    isBare(placed) ? numberCentres(units, placed) : rowCentres(units, placed);
  return {
    note: { id, anchors: [at], forms: [formOf(units), numbersForm(units)] },
    about: units.flatMap(({ mark }) => mark.about),
    hook: (placed) => {
      const centres = centresOf(placed);
      const [first = placed.anchor] = centres;
      const nearest = centres.reduce(
        (best, centre) => (distanceMm(centre, placed.anchor) < distanceMm(best, placed.anchor) ? centre : best),
        first,
      );
      return { at: nearest, radiusMm: mostRadiusMm };
    },
    draw: (placed) =>
      centresOf(placed).flatMap((centre, order): Shape[] => {
        const unit = units[order];
        if (unit === undefined) return [];
        const words = isBare(placed) ? [] : wordsShapes(unit, centre, isMirrored(placed));
        return [...words, balloonAt(unit, centre)];
      }),
  };
};
