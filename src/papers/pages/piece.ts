import type { Shape } from '../drawing/shapes.ts';
import { riseMm, type TypeStyle } from './type-styles.ts';

/** Where a piece is set: its upper left corner. */
export interface Corner {
  readonly leftMm: number;
  readonly topMm: number;
}

/** The smallest part of a chapter that is kept on one page: a paragraph, a row of a table, a heading. */
export interface Piece {
  readonly heightMm: number;
  /** room above it, left out where it begins a page */
  readonly gapMm: number;
  readonly shapes: (corner: Corner) => readonly Shape[];
  /** stands on one page with what follows it */
  readonly isChained?: boolean;
  /** set again above it where it begins a page: the head of its table */
  readonly repeats?: readonly Piece[];
  readonly bookmark?: { readonly title: string; readonly level: 0 | 1 };
  /** all its words, as they were before they were set in lines; the index looks in them */
  readonly says: readonly string[];
  /** ids of what it tells of */
  readonly about?: readonly string[];
}

/** Lines of type under each other, from the top of the first. */
export const lineShapes = (
  lines: readonly string[],
  style: TypeStyle,
  { leftMm, topMm, rightMm }: Corner & { readonly rightMm?: number },
): Shape[] =>
  lines.flatMap((text, at) =>
    text === ''
      ? []
      : [
          {
            kind: 'text',
            xMm: rightMm ?? leftMm,
            yMm: topMm + riseMm(style) + at * style.pitchMm,
            text,
            sizeMm: style.sizeMm,
            face: style.face,
            ...(style.weight === undefined ? {} : { weight: style.weight }),
            ...(rightMm === undefined ? {} : { anchor: 'end' as const }),
            ink: style.ink,
          },
        ],
  );
