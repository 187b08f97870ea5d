import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';

/** What the page asks of the planning worker. `revision` grows with every request, so an old answer can be told from a new one. */
export type PlanRequest =
  | { readonly kind: 'plan'; readonly revision: number; readonly boatText: string }
  | { readonly kind: 'cancel'; readonly revision: number };

/** A boat file that was turned away: what is wrong, where, what to do, and further problems of the same file. */
export interface Refusal {
  readonly says: string;
  readonly place?: string;
  readonly whatToDo: string;
  readonly more?: readonly string[];
}

/** A boat and its plan; `titles` are the titles of the rules by id; `settled` is false while a cheaper layout is still looked for. `ms` is the time since the request. */
export interface PlanAnswer {
  readonly revision: number;
  readonly boat: Boat;
  readonly plan: Plan;
  readonly titles: ReadonlyMap<string, string>;
  readonly settled: boolean;
  readonly ms: number;
}

/** What the worker says back. A `fault` is an error in the program, never in the boat file. */
export type PlanReply =
  | { readonly kind: 'progress'; readonly revision: number; readonly says: string }
  | ({ readonly kind: 'answer' } & PlanAnswer)
  | ({ readonly kind: 'refused'; readonly revision: number } & Refusal)
  | { readonly kind: 'fault'; readonly revision: number; readonly detail: string };

/** What the page knows of its plan: the last answer stays while a new one is on its way. */
export interface PlanState {
  readonly revision: number;
  readonly busy: boolean;
  readonly progress?: string;
  readonly answer?: PlanAnswer;
  readonly refusal?: Refusal;
  readonly fault?: string;
}

export type PlanEvent =
  | { readonly kind: 'asked'; readonly revision: number }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'closed' }
  | PlanReply;

export const firstPlanState: PlanState = { revision: 0, busy: false };

const settledOn = (state: PlanState): PlanState => ({
  revision: state.revision,
  busy: false,
  ...(state.answer === undefined ? {} : { answer: state.answer }),
});

const afterReply = (state: PlanState, reply: PlanReply): PlanState => {
  if (!state.busy || reply.revision !== state.revision) return state;
  switch (reply.kind) {
    case 'progress':
      return { ...state, progress: reply.says };
    case 'answer': {
      const { kind: _, ...answer } = reply;
      return { revision: state.revision, busy: !answer.settled, answer };
    }
    case 'refused': {
      const { kind: _, revision: __, ...refusal } = reply;
      return { ...settledOn(state), refusal };
    }
    case 'fault':
      return { ...settledOn(state), fault: reply.detail };
  }
};

/**
 * The next state of the page's plan. Replies that belong to an earlier request, or come after a cancel, change nothing;
 * a refusal or a fault leaves the last good answer in place.
 */
export const nextPlanState = (state: PlanState, event: PlanEvent): PlanState => {
  switch (event.kind) {
    case 'asked':
      return { ...settledOn(state), revision: event.revision, busy: true };
    case 'cancelled':
      return settledOn(state);
    case 'closed':
      return { revision: state.revision, busy: false };
    default:
      return afterReply(state, event);
  }
};
