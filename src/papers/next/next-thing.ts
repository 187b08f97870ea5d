import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { Tested } from '../../core/proof/dock/tested.ts';
import type { JobStep } from './job-steps.ts';

/** One thing to do at a boat: where, what, and what it is good for. */
export interface NextThing {
  readonly id: string;
  readonly step: JobStep;
  readonly does: string;
  readonly why: string;
  /** how it is done on the page, where that wants a word; at a terminal `at-terminal.ts` says how */
  readonly onPage?: string;
}

/** What is looked at: the boat, her plan, and how far her log says tests and jobs have come. */
export interface NextAsked {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly tested?: Tested | undefined;
  readonly done?: ReadonlyMap<string, unknown> | undefined;
}

/** Looks whether a thing is to be done. */
export type Look = (asked: NextAsked) => NextThing | undefined;
