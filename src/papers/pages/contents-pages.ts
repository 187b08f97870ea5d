import type { Binder } from '../binder/binder-shape.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { type ChapterPages, startFlow } from './page-flow.ts';
import { type PaperName, roomOf } from './paper-sizes.ts';
import { lineShapes, type Piece } from './piece.ts';
import { setLines } from './set-lines.ts';
import { typeStyles } from './type-styles.ts';
import { headingPieces } from './word-pieces.ts';

/** A line of the contents; `page` counts from 0. */
export interface ContentsLine {
  readonly title: string;
  readonly level: 0 | 1;
  readonly page: number;
}

const numberMm = 12;

const contentsPiece = ({ title, level, page }: ContentsLine, widthMm: number): Piece => {
  const style = level === 0 ? typeStyles.strong : typeStyles.words;
  const insetMm = level === 0 ? 0 : 6;
  const lines = setLines(title, style, widthMm - insetMm - numberMm - 4);
  const lastMm = textWidthMm(lines.at(-1) ?? '', style);
  const heightMm = lines.length * style.pitchMm;
  return {
    heightMm,
    gapMm: level === 0 ? 2.2 : 0.5,
    shapes: ({ leftMm, topMm }) => [
      ...lineShapes(lines, style, { leftMm: leftMm + insetMm, topMm }),
      {
        kind: 'path',
        d: `M${(leftMm + insetMm + lastMm + 2).toFixed(2)} ${(topMm + heightMm - 1.2).toFixed(2)}H${(leftMm + widthMm - numberMm + 2).toFixed(2)}`,
        stroke: { ink: 'quiet', widthMm: 0.2, dashMm: [0.2, 1.6] },
      },
      ...lineShapes([String(page + 1)], style, {
        leftMm,
        topMm: topMm + heightMm - style.pitchMm,
        rightMm: leftMm + widthMm,
      }),
    ],
    ...(level === 0 ? { isChained: true } : {}),
    says: [],
  };
};

/** The contents in pages: every chapter and every heading with the page it stands on, each a link to it. */
export const contentsPages = (lines: readonly ContentsLine[], paper: PaperName): ChapterPages => {
  const flow = startFlow(paper, false);
  const { widthMm } = roomOf(flow.page().area);
  flow.place(headingPieces('Contents', widthMm, { level: 0 }));
  for (const line of lines) {
    const piece = contentsPiece(line, widthMm);
    flow.place([{ ...piece, isChained: false }]);
    const { yMm, area, links } = flow.page();
    links.push({
      leftMm: area.leftMm,
      topMm: yMm - piece.heightMm,
      widthMm,
      heightMm: piece.heightMm,
      toPage: line.page,
    });
  }
  return flow;
};

/** The line at the foot of every page but the cover: "Gannet · as planned · revision 2 · 2026-11-26 · sheet 3 of 74". */
export const footWords = (
  { boat, standing, revision, dateIso }: Binder,
  { sheet, sheets }: { sheet: number; sheets: number },
): string =>
  [
    boat,
    standing,
    ...(revision === undefined ? [] : [`revision ${revision}`]),
    ...(dateIso === undefined ? [] : [dateIso]),
    `sheet ${sheet} of ${sheets}`,
  ].join(' · ');
