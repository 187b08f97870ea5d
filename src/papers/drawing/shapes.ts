/**
 * A drawing as plain data: shapes on a sheet measured in millimetres, y downwards. It knows nothing of boats.
 * The same drawing becomes SVG text (papers), React elements (app) and, later, PDF.
 */
export interface Drawing {
  /** what the sheet shows, in a few words: the title of the SVG and its name for a screen reader */
  readonly title?: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly shapes: readonly Shape[];
}

/** Names of the inks; each theme gives them a colour, as CSS variables on screen and as values on paper. */
export type Ink =
  | 'ink'
  | 'quiet'
  | 'rule'
  | 'data'
  | 'ethernet'
  | 'power'
  | 'accent'
  | 'paper'
  | 'margin'
  | 'water'
  | 'none';

export interface Stroke {
  readonly ink: Ink;
  readonly widthMm: number;
  readonly dashMm?: readonly number[];
}

/** `about`: ids of what the shape stands for, so that a note and the drawing can light each other. */
interface Common {
  readonly about?: readonly string[];
}

export interface PathShape extends Common {
  readonly kind: 'path';
  /** SVG path data in millimetres, rounded to 0.01 */
  readonly d: string;
  readonly stroke?: Stroke;
  readonly fill?: Ink;
}

export interface CircleShape extends Common {
  readonly kind: 'circle';
  readonly xMm: number;
  readonly yMm: number;
  readonly radiusMm: number;
  readonly stroke?: Stroke;
  readonly fill?: Ink;
}

export interface TextShape extends Common {
  readonly kind: 'text';
  readonly xMm: number;
  readonly yMm: number;
  readonly text: string;
  readonly sizeMm: number;
  readonly face: 'words' | 'figures';
  readonly weight?: 'regular' | 'semibold';
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly ink: Ink;
}

/** A group carries one meaning: a screen reader reads `label`, a balloon can be focused when `focusable`. */
export interface GroupShape extends Common {
  readonly kind: 'group';
  readonly label?: string;
  readonly focusable?: boolean;
  readonly shapes: readonly Shape[];
}

export type Shape = PathShape | CircleShape | TextShape | GroupShape;
