import type { SavedState } from '../../../core/boat-store-shape.ts';

/** An earlier state, and how much room it takes, in letters. */
interface KeptState extends SavedState {
  readonly size: number;
}

/** What is told of a boat in this browser, beside her text. */
export interface KeptFacts {
  readonly name: string;
  readonly says: string;
  readonly tag: string;
  /** from the oldest to the newest */
  readonly states: readonly KeptState[];
  /** changes of the boat, her log or her pictures that are in no export */
  readonly changes: number;
  /** when the first of them was made */
  readonly changedMs?: number;
  /** when all of her was exported last */
  readonly exportedMs?: number;
}

/** The facts after one more change. */
export const withChange = (facts: KeptFacts, nowMs: number): KeptFacts => ({
  ...facts,
  changes: facts.changes + 1,
  changedMs: facts.changedMs ?? nowMs,
});

/** The facts after an export that held the first `held` changes; one made meanwhile is in none yet. */
export const withExport = (facts: KeptFacts, { held, nowMs }: { held: number; nowMs: number }): KeptFacts => {
  const { changedMs: _, ...rest } = facts;
  const changes = Math.max(0, facts.changes - held);
  return { ...rest, changes, exportedMs: nowMs, ...(changes === 0 ? {} : { changedMs: nowMs }) };
};
