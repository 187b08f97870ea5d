import type { Block } from '../binder/binder-shape.ts';
import type { Shape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { keepUnits } from '../lists/print-figure.ts';
import { lineShapes, type Piece } from './piece.ts';
import { setLines } from './set-lines.ts';
import { type TypeStyle, typeStyles } from './type-styles.ts';

/** Words are set no wider than this: longer lines are hard to come back from. */
const readableMm = 165;

/** A paragraph longer than this may go on over the page, line by line. */
const linesKept = 8;

const gapsMm = { words: 2, points: 1.1, tick: 1.4, heading: 6, chapter: 0, caution: 1.2, blank: 2 } as const;

/** A paragraph, set in from the left by `insetMm`. */
export const wordPieces = (
  text: string,
  widthMm: number,
  {
    style = typeStyles.words,
    insetMm = 0,
    gapMm = gapsMm.words,
  }: { style?: TypeStyle; insetMm?: number; gapMm?: number } = {},
): Piece[] => {
  const lines = setLines(keepUnits(text), style, Math.min(widthMm, readableMm) - insetMm);
  const perPiece = lines.length <= linesKept ? lines.length : 1;
  const pieces: Piece[] = [];
  for (let at = 0; at < lines.length; at += perPiece) {
    const own = lines.slice(at, at + perPiece);
    pieces.push({
      heightMm: own.length * style.pitchMm,
      gapMm: at === 0 ? gapMm : 0,
      shapes: ({ leftMm, topMm }) => lineShapes(own, style, { leftMm: leftMm + insetMm, topMm }),
      // no line of a paragraph stands alone on a page
      ...(perPiece === 1 && (at === 0 || at === lines.length - 2) ? { isChained: true } : {}),
      says: at === 0 ? [text] : [],
    });
  }
  return pieces;
};

/** A heading in the outline and in the contents, kept with what follows it. */
export const headingPieces = (
  text: string,
  widthMm: number,
  { level, about }: { level: 0 | 1; about?: readonly string[] },
): Piece[] => {
  const style = level === 0 ? typeStyles.chapter : typeStyles.heading;
  const lines = setLines(text, style, widthMm);
  const ruleMm = level === 0 ? 2.5 : 0;
  return [
    {
      heightMm: lines.length * style.pitchMm + ruleMm,
      gapMm: level === 0 ? gapsMm.chapter : gapsMm.heading,
      shapes: ({ leftMm, topMm }) => [
        ...lineShapes(lines, style, { leftMm, topMm }),
        ...(level === 0 ? [ruleShape(leftMm, topMm + lines.length * style.pitchMm + 1, widthMm, 0.5)] : []),
      ],
      isChained: true,
      bookmark: { title: text, level },
      says: [text],
      ...(about === undefined ? {} : { about }),
    },
  ];
};

/** A rule across the page. */
export const ruleShape = (leftMm: number, yMm: number, widthMm: number, strokeMm: number): Shape => ({
  kind: 'path',
  d: `M${leftMm.toFixed(2)} ${yMm.toFixed(2)}L${(leftMm + widthMm).toFixed(2)} ${yMm.toFixed(2)}`,
  stroke: { ink: strokeMm < 0.2 ? 'quiet' : 'ink', widthMm: strokeMm },
});

/** A box to tick. */
export const tickBox = (leftMm: number, topMm: number, sideMm = 3.4): Shape => ({
  kind: 'path',
  d: `M${leftMm.toFixed(2)} ${topMm.toFixed(2)}h${sideMm}v${sideMm}h${-sideMm}Z`,
  stroke: { ink: 'ink', widthMm: 0.25 },
});

const withMark = (pieces: Piece[], mark: (corner: { leftMm: number; topMm: number }) => Shape[]): Piece[] =>
  pieces.map((piece, at) =>
    at === 0 ? { ...piece, shapes: (corner) => [...mark(corner), ...piece.shapes(corner)] } : piece,
  );

const pointPieces = (text: string, widthMm: number): Piece[] =>
  withMark(wordPieces(text, widthMm, { insetMm: 5, gapMm: gapsMm.points }), ({ leftMm, topMm }) =>
    lineShapes(['–'], typeStyles.words, { leftMm: leftMm + 1, topMm }),
  );

/** A line to write on behind some words, or across the page where the words leave no room. */
const blankLine = (label: string, widthMm: number, insetMm: number): Piece => {
  const style = typeStyles.quiet;
  const lines = setLines(label, style, widthMm - insetMm);
  const heightMm = 8 + (lines.length - 1) * style.pitchMm;
  const lastMm = Math.min(widthMm - insetMm - 30, textWidthMm(lines.at(-1) ?? '', style) + 2);
  return {
    heightMm,
    gapMm: 0,
    shapes: ({ leftMm, topMm }) => [
      ...lineShapes(lines, style, { leftMm: leftMm + insetMm, topMm: topMm + 8 - style.pitchMm - 0.6 }),
      ruleShape(leftMm + insetMm + lastMm, topMm + heightMm - 0.5, widthMm - insetMm - lastMm, 0.15),
    ],
    says: [label],
  };
};

const tickPieces = ({ text, blank }: { text: string; blank?: string }, widthMm: number): Piece[] => {
  const said = withMark(wordPieces(text, widthMm, { insetMm: 6.5, gapMm: gapsMm.tick }), ({ leftMm, topMm }) => [
    tickBox(leftMm, topMm + 0.4),
  ]);
  if (blank === undefined) return said;
  return [...said.map((piece) => ({ ...piece, isChained: true })), blankLine(blank, widthMm, 6.5)];
};

const cautionPieces = (
  { hazard, text, deferTo }: { hazard: string; text: string; deferTo?: string },
  widthMm: number,
): Piece[] => {
  const insetMm = 8;
  const roomMm = Math.min(widthMm, readableMm) - insetMm;
  const [title, says, decides] = [
    setLines(hazard, typeStyles.strong, roomMm),
    setLines(keepUnits(text), typeStyles.words, roomMm),
    deferTo === undefined ? [] : setLines(`What decides: ${deferTo}`, typeStyles.quiet, roomMm),
  ];
  const heights = [title.length * typeStyles.strong.pitchMm, says.length * typeStyles.words.pitchMm];
  const heightMm = (heights[0] ?? 0) + (heights[1] ?? 0) + decides.length * typeStyles.quiet.pitchMm;
  return [
    {
      heightMm,
      gapMm: gapsMm.caution,
      shapes: ({ leftMm, topMm }) => [
        // a triangle with its stroke, the open sign of ISO 7010 W001, stands beside the words, never alone
        { kind: 'path', d: triangle(leftMm, topMm + 0.4), stroke: { ink: 'ink', widthMm: 0.45 } },
        ...lineShapes(['!'], typeStyles.strong, { leftMm: leftMm + 2.52, topMm: topMm + 0.55 }),
        ...lineShapes(title, typeStyles.strong, { leftMm: leftMm + insetMm, topMm }),
        ...lineShapes(says, typeStyles.words, { leftMm: leftMm + insetMm, topMm: topMm + (heights[0] ?? 0) }),
        ...lineShapes(decides, typeStyles.quiet, {
          leftMm: leftMm + insetMm,
          topMm: topMm + (heights[0] ?? 0) + (heights[1] ?? 0),
        }),
      ],
      says: [hazard, text],
    },
  ];
};

const triangle = (leftMm: number, topMm: number): string =>
  `M${leftMm.toFixed(2)} ${(topMm + 5).toFixed(2)}L${(leftMm + 3).toFixed(2)} ${topMm.toFixed(2)}L${(leftMm + 6).toFixed(2)} ${(topMm + 5).toFixed(2)}Z`;

/** Every block that is words alone, as pieces for a page of this width. */
export const blockPieces = (
  block: Exclude<Block, { kind: 'table' } | { kind: 'drawing' } | { kind: 'page' }>,
  widthMm: number,
): Piece[] => {
  switch (block.kind) {
    case 'heading':
      return headingPieces(block.text, widthMm, {
        level: 1,
        ...(block.about === undefined ? {} : { about: block.about }),
      });
    case 'words':
      return wordPieces(block.text, widthMm, { style: block.isQuiet === true ? typeStyles.quiet : typeStyles.words });
    case 'points':
      return block.points.flatMap((point) => pointPieces(point, widthMm));
    case 'caution':
      return cautionPieces(block, widthMm);
    case 'ticks':
      return block.ticks.flatMap((tick) => tickPieces(tick, widthMm));
    case 'blanks':
      return block.blanks.map((blank) => blankLine(blank, Math.min(widthMm, readableMm), 0));
  }
};
