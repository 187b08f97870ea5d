import type { Patches } from 'mutative';
import type { Boat } from './boat-schema.ts';

/** One edit that was made, with what leads forth and back. */
export interface Step {
  /** what it did, as a sentence */
  readonly title: string;
  readonly forth: Patches;
  readonly back: Patches;
}

/** A boat with the edits that led to it and those that were taken back; the last of each is the next to go. */
export interface History {
  readonly boat: Boat;
  readonly done: readonly Step[];
  readonly undone: readonly Step[];
}

/** A history without edits. */
export const startHistory = (boat: Boat): History => ({ boat, done: [], undone: [] });
