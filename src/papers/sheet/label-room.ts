import type { Box } from '../drawing/box.ts';
import type { Point } from '../drawing/point.ts';
import type { Run } from './lines-on-view.ts';

export interface SoftLine {
  readonly from: Point;
  readonly to: Point;
  readonly costPerMm: number;
}

/** What labels and notes must keep clear of. */
export interface Room {
  /** where they may stand */
  readonly within: Box;
  /** boxes that nothing may touch */
  readonly taken: readonly Box[];
  /** lines that nothing may cover */
  readonly runs: readonly Run[];
  /** lines that are better left clear, and how much each millimetre of them under a label costs */
  readonly soft: readonly SoftLine[];
  /** other marks that nothing may cover and no leader should pass through */
  readonly points: readonly Point[];
}

/** Room for balloons of a size, with words beside them or without. */
export interface LabelRoom extends Room {
  readonly radiusMm: number;
  readonly words: boolean;
}
