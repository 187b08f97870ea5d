import { nearestName } from './nearest-name.ts';
import type { FilePath } from './place-in-file.ts';

/** One thing wrong in a boat file: where, one sentence, what to do. `near` offers names that may have been meant. */
export interface BoatProblem {
  readonly path: FilePath;
  readonly says: string;
  readonly whatToDo: string;
  readonly near?: { readonly given: string; readonly known: Iterable<string> };
}

/** The sentence of a problem, with the nearest known name where one is near; worked out only for what is shown. */
export const sentenceOf = ({ says, near }: BoatProblem): string => {
  const nearest = near === undefined ? undefined : nearestName(near.given, near.known);
  return nearest === undefined ? says : `${says.replace(/\.$/, '')}; did you mean \`${nearest}\`?`;
};
