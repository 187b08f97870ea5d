import type { ReactNode } from 'react';
import type { EditCall } from '../../../../../core/boat/history.ts';
import { answerEdit, type WalkAnswer } from '../../../../../core/walk-round/answer-edits.ts';
import { useEdit } from '../../../edit-context.ts';
import { words } from './words.ts';

type Option = readonly [says: string, answer: WalkAnswer | readonly EditCall[]];

const isCalls = (answer: Option[1]): answer is readonly EditCall[] => Array.isArray(answer);

/** Answers to choose from by one press. */
export const AnswerOptions = ({ options, what }: { options: readonly Option[]; what: string }): ReactNode => {
  const edit = useEdit();
  return (
    <fieldset className="walk-options">
      <legend className="unseen">{what}</legend>
      {options.map(([says, answer]) => (
        <button key={says} type="button" onClick={() => edit(isCalls(answer) ? answer : [answerEdit(answer)])}>
          {says}
        </button>
      ))}
    </fieldset>
  );
};

export const yesNo = (answerOf: (has: boolean) => WalkAnswer): readonly Option[] => [
  [words.yes, answerOf(true)],
  [words.no, answerOf(false)],
];

/** One of many to pick from a list. */
export const AnswerPick = ({
  what,
  first = words.choose,
  picks,
  editsOf,
}: {
  what: string;
  first?: string;
  picks: readonly (readonly [id: string, says: string])[];
  editsOf: (id: string) => readonly EditCall[];
}): ReactNode => {
  const edit = useEdit();
  return (
    <select
      className="walk-pick"
      aria-label={what}
      value=""
      onChange={(event) => {
        if (event.target.value !== '') edit(editsOf(event.target.value));
      }}
    >
      <option value="">{first}</option>
      {picks.map(([id, says]) => (
        <option key={id} value={id}>
          {says}
        </option>
      ))}
    </select>
  );
};
