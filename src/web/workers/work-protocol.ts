import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { PlanWork } from '../../core/work-shape.ts';

/** What the page asks of the worker that the order of the work is looked for in. */
export interface WorkRequest {
  readonly boat: Boat;
  readonly plan: Plan;
  /** jobs that are done, with the day each was */
  readonly done: ReadonlyMap<string, string>;
  readonly today?: string;
}

/** What comes back: the work with the best order so far, again and again, until nothing more is looked for. */
export type WorkReply =
  | { readonly kind: 'work'; readonly work: PlanWork; readonly isLast: boolean }
  | { readonly kind: 'fault'; readonly detail: string };
