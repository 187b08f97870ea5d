import type { Binder } from '../binder/binder-shape.ts';
import type { Shape } from '../drawing/shapes.ts';
import type { Page } from './page-shape.ts';
import { type PaperName, pageArea } from './paper-sizes.ts';
import { lineShapes } from './piece.ts';
import { printRuler, rulerMm } from './print-ruler.ts';
import { setLines } from './set-lines.ts';
import { type TypeStyle, typeStyles } from './type-styles.ts';
import { ruleShape } from './word-pieces.ts';

const check = [
  'Print check. Print at 100 %, not fitted to the page.',
  'Lay a ruler on both lines: each is 100 mm long.',
  'Where they are not, no drawing in here is at its scale.',
] as const;

/** The page on top: whose papers these are, of what day, and two rulers by which the print is checked. */
export const coverPage = (binder: Binder, paper: PaperName): Page => {
  const area = pageArea(paper, false);
  const widthMm = area.rightMm - area.leftMm;
  const shapes: Shape[] = [];
  let yMm = area.topMm + 26;
  const add = (text: string, style: TypeStyle, gapMm: number): void => {
    const lines = setLines(text, style, widthMm);
    yMm += gapMm;
    shapes.push(...lineShapes(lines, style, { leftMm: area.leftMm, topMm: yMm }));
    yMm += lines.length * style.pitchMm;
  };
  add(binder.boat, typeStyles.boat, 0);
  shapes.push(ruleShape(area.leftMm, yMm + 3, widthMm, 0.6));
  add(`Papers of her navigation electronics, ${binder.standing}`, typeStyles.heading, 8);
  for (const line of binder.cover) add(line, typeStyles.words, 1.5);
  const mark = [
    ...(binder.revision === undefined ? [] : [`Revision ${binder.revision}`]),
    ...(binder.dateIso === undefined ? [] : [binder.dateIso]),
  ];
  if (mark.length > 0) add(mark.join(' · '), typeStyles.strong, 6);
  const rulerTopMm = area.bottomMm - rulerMm;
  shapes.push(...printRuler({ leftMm: area.leftMm, topMm: rulerTopMm }));
  shapes.push(...lineShapes(check, typeStyles.words, { leftMm: area.leftMm + 14, topMm: rulerTopMm + 14 }));
  return { widthMm: area.widthMm, heightMm: area.heightMm, shapes, insets: [], links: [] };
};
