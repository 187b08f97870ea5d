import { type ReactNode, useState } from 'react';
import type { BoatIndex } from '../../../../../core/boat/boat-index.ts';
import { cautions } from '../../../../../core/facts/cautions.ts';
import type { WalkQuestion, WalkStop } from '../../../../../core/walk-round/walk-question.ts';
import { questionWords } from '../../../../../papers/walk-round/question-words.ts';
import { useWords } from '../../../words/units.ts';
import { AnswerField } from './answer-field.tsx';
import { questionKey } from './next-open.ts';
import { words } from './words.ts';

const QuestionRow = ({
  index,
  question,
  place,
}: {
  index: BoatIndex;
  question: WalkQuestion;
  place: string;
}): ReactNode => {
  const say = useWords();
  const { of, asks, file } = questionWords(index, question, place);
  return (
    <li className="walk-question" data-question={questionKey(question)} tabIndex={-1}>
      <p>
        {question.known ? (
          <span className="walk-tick" role="img" aria-label={words.answered}>
            ✓{' '}
          </span>
        ) : null}
        <span className="walk-of">{say(of)}</span> {say(asks)}
        {file === undefined ? null : <span className="quiet"> {say(words.inFile(file))}</span>}
      </p>
      <AnswerField index={index} question={question} what={say(`${of}: ${asks}`)} />
    </li>
  );
};

/** What is answered at a place already, to be looked at and put right. */
const Answered = ({
  index,
  questions,
  place,
}: {
  index: BoatIndex;
  questions: readonly WalkQuestion[];
  place: string;
}): ReactNode => {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <details className="walk-answered" onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>✓ {words.answeredHere(questions.length)}</summary>
      {isOpen ? (
        <ul>
          {questions.map((question) => (
            <QuestionRow key={questionKey(question)} index={index} question={question} place={place} />
          ))}
        </ul>
      ) : null}
    </details>
  );
};

/** One place of the walk: its cautions, what is open there, and what is answered. */
export const WalkStopView = ({
  index,
  stop,
  number,
}: {
  index: BoatIndex;
  stop: WalkStop;
  number: number;
}): ReactNode => {
  const open = stop.questions.filter(({ known }) => !known);
  const answered = stop.questions.filter(({ known }) => known);
  const said = cautions.filter(({ id }) => stop.cautions.includes(id));
  return (
    <details className="walk-stop">
      <summary>
        {number}. {index.places.get(stop.place)?.name ?? stop.place}
        <span className="quiet"> {words.answeredOf({ answered: answered.length, all: stop.questions.length })}</span>
      </summary>
      {said.map(({ id, text }) => (
        <p key={id} className="walk-caution">
          <strong>{words.caution}</strong> {text}
        </p>
      ))}
      <ul>
        {open.map((question) => (
          <QuestionRow key={questionKey(question)} index={index} question={question} place={stop.place} />
        ))}
      </ul>
      {answered.length === 0 ? null : <Answered index={index} questions={answered} place={stop.place} />}
    </details>
  );
};
