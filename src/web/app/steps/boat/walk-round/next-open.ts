import type { WalkStop } from '../../../../../core/walk-round/walk-question.ts';

/** A question among all of the walk. */
export const questionKey = ({ kind, about }: { readonly kind: string; readonly about: string }): string =>
  `${kind} ${about}`;

/**
 * The next question that is open after some question of the walk, round again from the bow where none is left behind it; the first
 * one where nothing was asked yet. Undefined once all are answered.
 */
export const nextOpen = (stops: readonly WalkStop[], after: string | undefined): string | undefined => {
  const questions = stops.flatMap((stop) => stop.questions);
  const here = questions.findIndex((question) => questionKey(question) === after);
  const found = [...questions.slice(here + 1), ...questions.slice(0, here + 1)].find(({ known }) => !known);
  return found === undefined ? undefined : questionKey(found);
};
