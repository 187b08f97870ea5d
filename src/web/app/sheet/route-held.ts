import { useSyncExternalStore } from 'react';
import type { LeadChoice } from '../../../core/leading/lead-choices.ts';
import type { LineEntry } from '../../../core/plan-shape.ts';

/** A line that somebody holds, by the hand or the keyboard, and where it would go; without `choice` it is over nothing. */
export interface HeldRoute {
  readonly line: LineEntry;
  readonly choice?: LeadChoice;
  /** where it could be let go; only while it is in the hand */
  readonly choices?: readonly LeadChoice[];
}

let held: HeldRoute | undefined;
const listeners = new Set<() => void>();

/** Shows a route on the drawing, or none; there is one drawing on a page. */
export const holdRoute = (next: HeldRoute | undefined): void => {
  held = next;
  for (const listener of listeners) listener();
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** What is held now. */
export const useHeldRoute = (): HeldRoute | undefined => useSyncExternalStore(subscribe, () => held);
