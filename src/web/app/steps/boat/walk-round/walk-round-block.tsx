import { type ReactNode, useMemo } from 'react';
import { type BoatIndex, indexBoat } from '../../../../../core/boat/boat-index.ts';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import { cautions } from '../../../../../core/facts/cautions.ts';
import type { WalkQuestion, WalkStop } from '../../../../../core/walk-round/walk-question.ts';
import { walkRound } from '../../../../../core/walk-round/walk-round.ts';
import { questionWords } from '../../../../../papers/walk-round/question-words.ts';
import { walkRoundPage } from '../../../../../papers/walk-round/walk-round-page.ts';
import { useWords } from '../../../words/units.ts';
import { AnswerField } from './answer-field.tsx';
import { words } from './words.ts';
import './walk-round.css';

/** Hands the form to the browser as a file, to be opened and printed from there. */
const saveForm = (boat: Boat): void => {
  const address = URL.createObjectURL(new Blob([walkRoundPage(boat)], { type: 'text/html' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = words.fileName(boat.name.toLowerCase().replace(/[^a-z0-9]+/g, '-'));
  link.click();
  URL.revokeObjectURL(address);
};

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
    <li>
      <p>
        <span className="walk-of">{say(of)}</span> {say(asks)}
        {file === undefined ? null : <span className="quiet"> {say(words.inFile(file))}</span>}
      </p>
      <AnswerField index={index} question={question} what={say(`${of}: ${asks}`)} />
    </li>
  );
};

const StopView = ({ index, stop, number }: { index: BoatIndex; stop: WalkStop; number: number }): ReactNode => {
  const open = stop.questions.filter(({ known }) => !known);
  const said = cautions.filter(({ id }) => stop.cautions.includes(id));
  return (
    <details className="walk-stop">
      <summary>
        {number}. {index.places.get(stop.place)?.name ?? stop.place}
        <span className="quiet"> {words.openHere(open.length)}</span>
      </summary>
      {said.map(({ id, text }) => (
        <p key={id} className="walk-caution">
          <strong>{words.caution}</strong> {text}
        </p>
      ))}
      <ul>
        {open.map((question) => (
          <QuestionRow
            key={`${question.kind} ${question.about}`}
            index={index}
            question={question}
            place={stop.place}
          />
        ))}
      </ul>
    </details>
  );
};

/** The walk round the boat on the screen: place by place what is still open, each with what takes the answer. */
export const WalkRoundBlock = ({ boat }: { boat: Boat }): ReactNode => {
  const index = useMemo(() => indexBoat(boat), [boat]);
  const stops = useMemo(() => walkRound(boat), [boat]);
  const questions = stops.flatMap((stop) => stop.questions).filter(({ known }) => !known).length;
  return (
    <section className="block walk-round">
      <h2>{words.heading}</h2>
      <p>{words.open({ places: stops.length, questions })}</p>
      <button type="button" className="walk-form" onClick={() => saveForm(boat)}>
        {words.saveForm}
      </button>
      {stops.map((stop, at) => (
        <StopView key={stop.place} index={index} stop={stop} number={at + 1} />
      ))}
    </section>
  );
};
