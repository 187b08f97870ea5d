import { nearestName } from '../core/boat/nearest-name.ts';
import { UserError } from '../core/boat/user-error.ts';

/**
 * The id that was typed for one thing of a list: itself, or the number that stands before it on the list.
 *
 * @throws UserError where no thing of the list is called so
 */
export const namedOrNumbered = (
  typed: string,
  {
    ids,
    numbers,
    what,
    list,
  }: {
    readonly ids: readonly string[];
    /** the number of each on the list, where they are numbered */
    readonly numbers?: ReadonlyMap<string, number>;
    /** "job" */
    readonly what: string;
    /** the command that prints the list */
    readonly list: string;
  },
): string => {
  const numbered = [...(numbers ?? [])].find(([, number]) => String(number) === typed)?.[0];
  const found = ids.find((id) => id === typed) ?? numbered;
  if (found !== undefined) return found;
  const near = nearestName(typed, ids);
  throw new UserError({
    says: `There is no ${what} “${typed}”${near === undefined ? '.' : `; did you mean ${near}?`}`,
    whatToDo: `${list} lists them all.`,
  });
};
