import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { checkReferences } from '../boat/check-references.ts';
import { edits } from '../boat/edits/index.ts';
import { inPlace } from '../boat/in-place.ts';
import { UserError } from '../boat/user-error.ts';
import { joinedRefit } from '../joins/joined-refit.ts';
import { arrivedIn } from '../readings/arrivals.ts';
import type { Refit } from '../readings/refit.ts';
import type { Candidate } from './candidate.ts';

/** The boat with the edits in it, not checked yet; undefined where one of them does not fit. */
export const edited = (boat: Boat, { edits: calls }: Pick<Candidate, 'edits'>): Boat | undefined => {
  try {
    return inPlace(boat, (draft) => {
      for (const { edit, params } of calls) edits[edit].ready(params).change(draft);
    });
  } catch (error) {
    if (error instanceof UserError) return undefined;
    throw error;
  }
};

const isWhole = (boat: Boat): boolean => checkReferences(boat).length === 0;

/** The boat with some edits in it; undefined where they do not fit it, or leave it broken. */
export const editedBoat = (boat: Boat, candidate: Pick<Candidate, 'edits'>): Boat | undefined => {
  const after = edited(boat, candidate);
  return after !== undefined && isWhole(after) ? after : undefined;
};

/**
 * What arrives with the edits of a cure in the boat, by `needKey`; nothing where they do not fit the boat, or would take
 * away a reading that arrives now. One candidate is tried once, however many gaps it is tried for.
 */
export const triesOn = (refit: Refit, phase: number): ((candidate: Candidate) => ReadonlySet<string>) => {
  const now = arrivedIn(refit, phase);
  const none: ReadonlySet<string> = new Set();
  const known = new Map<string, ReadonlySet<string>>();
  const tried = (candidate: Candidate): ReadonlySet<string> => {
    const boat = edited(refit.index.boat, candidate);
    if (boat === undefined) return none;
    const index = indexBoat(boat);
    const after = arrivedIn(joinedRefit(index), phase);
    const keepsAll = [...now].every((key) => after.has(key));
    return keepsAll && isWhole(boat) ? after : none;
  };
  return (candidate) => {
    const key = JSON.stringify(candidate.edits);
    const arrived = known.get(key) ?? tried(candidate);
    known.set(key, arrived);
    return arrived;
  };
};
