import type { History, Step } from './start-history.ts';

/** How much of a history is kept. */
export interface HistoryBounds {
  readonly steps: number;
  /** letters of the patches as text */
  readonly size: number;
}

/** 200 steps, but no more than 4 million letters: some steps hold a whole boat. */
export const historyBounds: HistoryBounds = { steps: 200, size: 4_000_000 };

const sizes = new WeakMap<Step, number>();

const sizeOf = (step: Step): number => {
  const known = sizes.get(step) ?? JSON.stringify([step.forth, step.back]).length;
  sizes.set(step, known);
  return known;
};

/** The history without the oldest steps, and then without those that would be made again last, until it is within its bounds. */
export const boundedHistory = (history: History, { steps, size }: HistoryBounds = historyBounds): History => {
  let [count, letters] = [0, 0];
  const kept = new Set<Step>();
  // the last of each list is nearest to hand, the first the oldest
  const nearest = [...history.undone.toReversed(), ...history.done.toReversed()];
  for (const step of nearest) {
    count += 1;
    letters += sizeOf(step);
    if (count > steps || letters > size) break;
    kept.add(step);
  }
  if (kept.size === nearest.length) return history;
  return {
    boat: history.boat,
    done: history.done.filter((step) => kept.has(step)),
    undone: history.undone.filter((step) => kept.has(step)),
  };
};
