import type { PlanWork } from '../work-shape.ts';
import { compareWorkCosts } from './order/check-work-answer.ts';
import type { WorkAnswer, WorkBudget } from './order/problem.ts';
import { quickAnswer } from './order/quick-answer.ts';
import { solveWork } from './order/solve-work.ts';
import { problemOfPhase } from './plan-phase-work.ts';
import { phaseInputs, putTogether, type WorkParts } from './put-together.ts';

/** How much is tried for the order of one phase while somebody waits and may stop it. */
export const fullOrderWork: WorkBudget = { work: 400_000 };

/**
 * The work of a boat with better and better orders, phase by phase, for a later phase begins when the one before it ends. What
 * comes first is the quick order. The budget counts work, so equal parts give equal answers; who has seen enough stops asking.
 */
export function* searchWork(parts: WorkParts, budget: WorkBudget = fullOrderWork): Generator<PlanWork> {
  const answers = new Map<string, WorkAnswer>(parts.answers ?? []);
  const now = (): WorkParts => ({ ...parts, answers });
  yield putTogether(now());
  for (let at = 0; ; at += 1) {
    const input = phaseInputs(now())[at];
    if (input === undefined) return;
    const problem = problemOfPhase(input);
    let known = answers.get(problem.hash) ?? quickAnswer(problem);
    for (const answer of solveWork(problem, budget)) {
      // The first answers of a search may be worse than the quick one; the last tells of an equal one how sure it is.
      if (known !== undefined && compareWorkCosts(answer.cost, known.cost) > 0) continue;
      known = answer;
      answers.set(problem.hash, answer);
      yield putTogether(now());
    }
  }
}
