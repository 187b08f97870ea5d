import { useSyncExternalStore } from 'react';

/** A day of a phase. */
export interface DayAt {
  readonly phase: number;
  readonly day: number;
}

/** What stands in place of the drawing: all days, or one of them as a sheet. */
export interface WorkView {
  readonly shows: 'days' | 'day';
  /** the day that was chosen; the next with something to do where none was */
  readonly at?: DayAt;
}

let now: WorkView = { shows: 'days' };
const listeners = new Set<() => void>();

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** Shows all days or one. */
export const showWork = (view: WorkView): void => {
  now = view;
  for (const listener of listeners) listener();
};

/** What is shown of the work now. */
export const useWorkView = (): WorkView => useSyncExternalStore(subscribe, () => now);
