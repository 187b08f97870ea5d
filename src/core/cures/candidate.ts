import type { EditCall } from '../boat/history.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { ReadingId } from '../facts/reading-ids.ts';

/** Something that may close a gap, not tried yet; `cost` of its parts in hundredths, absent where a part has no price. */
export interface Candidate {
  readonly says: string;
  readonly edits: readonly EditCall[];
  readonly cost: number | undefined;
}

/** A reading that should get to a unit. */
export interface Wish {
  readonly reading: ReadingId;
  readonly instance: number | undefined;
  readonly at: string;
}

/** Costs added up; absent where one of them is. */
export const sumOf = (costs: readonly (number | undefined)[]): number | undefined =>
  costs.reduce((sum, cost) => (sum === undefined || cost === undefined ? undefined : sum + cost), 0);

/** Cheapest first, what has no price last; then the one with fewer edits, then by words. */
export const byCost = (a: Candidate, b: Candidate): number =>
  (a.cost ?? Number.POSITIVE_INFINITY) - (b.cost ?? Number.POSITIVE_INFINITY) ||
  a.edits.length - b.edits.length ||
  byCodeUnit(a.says, b.says);

/** Words with a capital letter and a full stop. */
export const asSentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
