import type { Plan } from '../../../../core/plan-shape.ts';
import type { PlanWork } from '../../../../core/work-shape.ts';
import type { WorkReply, WorkRequest } from '../../../workers/work-protocol.ts';

/** The work as it is known now. */
export interface WorkFound {
  readonly work: PlanWork | undefined;
  /** the plan that the work was found for; absent while it is the one of another */
  readonly plan?: Plan;
  /** a better order is being looked for */
  readonly isSearching: boolean;
  /** why nothing more is found: an error in the program */
  readonly fault?: string;
}

/** Where the order of the work is looked for: one search at a time, the latest asked for. */
export interface WorkDesk {
  readonly state: () => WorkFound;
  readonly onChange: (listener: () => void) => () => void;
  /** asks anew where anything of the boat, the plan, what is done or the day is another */
  readonly want: (wanted: WorkRequest) => void;
  /** ends the search and keeps what it found */
  readonly stop: () => void;
  /** somebody looks on until what this gives is called; with the last of them the search ends, and is taken up by the next */
  readonly hold: () => () => void;
}

/** Begins a search, and gives what ends it. */
export type BeginSearch = (request: WorkRequest, hear: (reply: WorkReply) => void) => () => void;

const isSame = (one: WorkRequest, other: WorkRequest): boolean =>
  one.boat === other.boat &&
  one.plan === other.plan &&
  one.today === other.today &&
  one.done.size === other.done.size &&
  [...one.done].every(([job, day]) => other.done.get(job) === day);

/**
 * A desk over one kind of search. What was found for another boat, another plan or other ticks is dropped when it comes late; the
 * order that stood stays to be looked at until the first new one is there.
 */
export const workDesk = (begin: BeginSearch): WorkDesk => {
  let state: WorkFound = { work: undefined, isSearching: false };
  let wanted: WorkRequest | undefined;
  let end: (() => void) | undefined;
  let holders = 0;
  const listeners = new Set<() => void>();
  const move = (next: WorkFound): void => {
    state = next;
    for (const listener of listeners) listener();
  };
  const letGo = (): void => {
    end?.();
    end = undefined;
  };
  const stop = (): void => {
    letGo();
    move({ ...state, isSearching: false });
  };
  return {
    state: () => state,
    onChange: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    want: (next) => {
      if (wanted !== undefined && isSame(wanted, next)) return;
      const isOther = wanted?.boat.name !== next.boat.name;
      wanted = next;
      letGo();
      move({ work: isOther || state.work === undefined ? next.plan.work : state.work, isSearching: true });
      end = begin(next, (reply) => {
        // a search that was given up may have sent one more
        if (wanted !== next) return;
        if (reply.kind === 'fault') move({ ...state, isSearching: false, fault: reply.detail });
        else move({ work: reply.work, plan: next.plan, isSearching: !reply.isLast });
      });
    },
    stop,
    hold: () => {
      holders += 1;
      return () => {
        holders -= 1;
        if (holders > 0 || !state.isSearching) return;
        wanted = undefined;
        stop();
      };
    },
  };
};
