import type { BoatIndex } from '../../../../../core/boat/boat-index.ts';
import type { WalkQuestion } from '../../../../../core/walk-round/walk-question.ts';

/** What takes an answer is made from. */
export interface AnswerProps {
  readonly index: BoatIndex;
  readonly question: WalkQuestion;
  /** the question, for those who hear it */
  readonly what: string;
}
