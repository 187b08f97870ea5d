import { sentenceOf } from '../boat-problem.ts';
import { UserError } from '../user-error.ts';

/** The entry of a list with some id; throws UserError with the nearest id where there is none. */
export const findInBoat = <Entry extends { id: string }>(list: readonly Entry[], id: string, what: string): Entry => {
  const found = list.find((entry) => entry.id === id);
  if (found !== undefined) return found;
  const whatToDo = `Name a ${what} of the boat.`;
  const near = { given: id, known: list.map((entry) => entry.id) };
  throw new UserError({
    says: sentenceOf({ path: [], says: `There is no ${what} "${id}" in this boat.`, whatToDo, near }),
    whatToDo,
  });
};
