import type { MmShape } from '../../core/fits-shape.ts';

/** A hole to drill, in millimetres. */
export interface Drilled {
  readonly xMm: number;
  readonly yMm: number;
  readonly holeMm: number;
}

/** One outline with what it is, in a few words. */
export interface Outline {
  readonly shape: MmShape;
  readonly says: string;
}

/**
 * One template in its true size: what is cut, what is only marked to lay it by, and what is drilled. Millimetres from its own
 * middle, x to the right, y up, as seen from the front.
 */
export interface Template {
  /** the name of its files */
  readonly id: string;
  readonly title: string;
  readonly about: readonly string[];
  readonly cut: readonly Outline[];
  readonly mark: readonly Outline[];
  readonly drill: readonly Drilled[];
  /** what to know before it is used, a line each */
  readonly says: readonly string[];
  /** why nothing may be cut by it; empty where it may */
  readonly notForCutting: readonly string[];
}
