import { sentenceOf } from '../boat-problem.ts';
import type { Boat } from '../boat-schema.ts';
import { checkReferences } from '../check-references.ts';
import { UserError } from '../user-error.ts';

/** Throws UserError with the first thing that an edit left broken, so that no edit makes a boat that cannot be read again. */
export const refuseBroken = (boat: Boat): void => {
  const [problem] = checkReferences(boat);
  if (problem !== undefined) throw new UserError({ says: sentenceOf(problem), whatToDo: problem.whatToDo });
};
