import type { BoatProblem } from '../boat-problem.ts';
import type { Boat } from '../boat-schema.ts';
import { everyId, type Named } from '../every-id.ts';

/** Ids given twice anywhere in the file, whatever they name. */
export const checkIds = (boat: Boat): BoatProblem[] => {
  const seen = new Map<string, Named>();
  const problems: BoatProblem[] = [];
  for (const named of everyId(boat)) {
    const first = seen.get(named.id);
    if (first === undefined) {
      seen.set(named.id, named);
      continue;
    }
    const both = first.what === named.what ? `${named.what} twice` : `${first.what} and of ${named.what}`;
    problems.push({
      path: [...named.path, 'id'],
      says: `"${named.id}" is the id of ${both}; an id names one thing in the whole file.`,
      whatToDo: 'Give one of the two another id, also where it is referred to.',
    });
  }
  return problems;
};
