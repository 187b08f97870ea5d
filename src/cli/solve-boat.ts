import { fullWork } from '../core/backbone/full-work.ts';
import { layoutProblems } from '../core/backbone/layout-problems.ts';
import type { Layout } from '../core/backbone/problem.ts';
import { solveLayout } from '../core/backbone/solve-layout.ts';
import { stoppedLayout } from '../core/backbone/stopped-layout.ts';
import type { Boat } from '../core/boat/boat-schema.ts';
import { plan } from '../core/plan.ts';
import type { Plan } from '../core/plan-shape.ts';
import { type SearchWords, searchWords } from '../papers/lists/search-words.ts';

/** Who looks on while layouts are searched. */
export interface SearchWatch {
  /** whether each search is to end with the first layout it has */
  readonly isStopped: () => boolean;
  readonly onProgress: (words: SearchWords) => void;
}

/** Nobody looks on, and every search runs to its end. */
export const unwatched: SearchWatch = { isStopped: () => false, onProgress: () => undefined };

/** Lets signals in. */
const breath = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/**
 * The plan of one boat with every layout problem worked through to the full budget, or until the watch says stop. `pictures`
 * are those beside her file, where it has a place of its own.
 */
export const solveBoat = async (
  boat: Boat,
  { isStopped, onProgress }: SearchWatch = unwatched,
  pictures?: ReadonlySet<string>,
): Promise<Plan> => {
  const layouts = new Map<string, Layout>();
  const problems = layoutProblems(boat);
  for (const [at, problem] of problems.entries()) {
    const place = { boat, problem, turn: at + 1, of: problems.length };
    onProgress(searchWords(place));
    for (const layout of solveLayout(problem, fullWork)) {
      layouts.set(problem.hash, layout);
      onProgress(searchWords({ ...place, layout }));
      await breath();
      if (!isStopped()) continue;
      layouts.set(problem.hash, stoppedLayout(layout));
      break;
    }
  }
  return plan(boat, layouts, undefined, pictures);
};
