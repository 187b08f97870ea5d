import { useSyncExternalStore } from 'react';
import type { Sheet } from '../../../../core/boat/sheet.ts';

/** What a person has in mind at the step Kit: a sheet picked to be placed, or a unit that another is to come for. */
export interface KitHand {
  /** picked, and to be put at a place */
  readonly picked?: { readonly sheet: Sheet; readonly place: (place: string) => void };
  /** unit in whose place the sheet that is pressed next comes */
  readonly replaces?: string;
  /** what is said on the drawing while something is in the hand */
  readonly says?: string;
}

let hand: KitHand = {};
const listeners = new Set<() => void>();

/** Takes up something else, or changes what is said of it; there is one hand on a page. */
export const takeUp = (next: KitHand): void => {
  hand = next;
  for (const listener of listeners) listener();
};

/** Says something of what is in the hand. */
export const sayOfHand = (says: string): void => {
  const { says: _, ...rest } = hand;
  takeUp(says === '' ? rest : { ...rest, says });
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** What is in the hand now. */
export const useKitHand = (): KitHand => useSyncExternalStore(subscribe, () => hand);
