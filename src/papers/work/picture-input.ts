import type { PhaseWork } from '../../core/work-shape.ts';
import type { WorkAxis } from './work-axis.ts';
import type { WorkNames } from './work-names.ts';

/** What the picture of the work is drawn from. */
export interface PictureInput {
  readonly names: WorkNames;
  readonly phases: readonly PhaseWork[];
  /** numbers of the jobs, the same wherever they are told of */
  readonly numbers: ReadonlyMap<string, number>;
  readonly done: ReadonlySet<string>;
  /** the day it is, where the work has begun */
  readonly today?: string;
}

/** The same, with the days that are drawn. */
export interface DrawnWork extends PictureInput {
  readonly axis: WorkAxis;
}
