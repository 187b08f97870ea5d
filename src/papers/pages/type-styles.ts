import type { Ink } from '../drawing/shapes.ts';
import type { TextStyle } from '../drawing/text-width.ts';

/** A point of type: 1/72 in. */
const pointMm = 25.4 / 72;

/** How words stand on a page. */
export interface TypeStyle extends TextStyle {
  readonly ink: Ink;
  /** from one line to the next */
  readonly pitchMm: number;
}

const style = (
  points: number,
  more: { face?: 'words' | 'figures'; isBold?: boolean; ink?: Ink; pitch?: number } = {},
): TypeStyle => ({
  sizeMm: points * pointMm,
  face: more.face ?? 'words',
  weight: more.isBold === true ? 'semibold' : 'regular',
  ink: more.ink ?? 'ink',
  pitchMm: points * pointMm * (more.pitch ?? 1.28),
});

/** Every style of the binder. None is smaller than 8 points: a page is read at arm’s length, in a locker, from a copy. */
export const typeStyles = {
  boat: style(34, { isBold: true, pitch: 1.15 }),
  chapter: style(19, { isBold: true, pitch: 1.2 }),
  heading: style(12.5, { isBold: true, pitch: 1.2 }),
  words: style(10),
  strong: style(10, { isBold: true }),
  quiet: style(9, { ink: 'quiet' }),
  head: style(8.5, { isBold: true, pitch: 1.15 }),
  cell: style(8.5, { pitch: 1.22 }),
  // one pitch with the words beside them, so that both stand on one line
  figure: style(8, { face: 'figures', pitch: (8.5 / 8) * 1.22 }),
  foot: style(8, { ink: 'quiet' }),
} as const satisfies Record<string, TypeStyle>;

/** From the top of a line of type to where its letters stand: the same for words and figures of one pitch. */
export const riseMm = ({ pitchMm }: TypeStyle): number => pitchMm * 0.75;
