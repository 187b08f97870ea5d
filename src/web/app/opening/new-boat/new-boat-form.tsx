import { type ReactNode, type SubmitEvent, useMemo, useState } from 'react';
import { UserError } from '../../../../core/boat/user-error.ts';
import type { HullMeasuresId } from '../../../../core/facts/hull-measures.ts';
import { boatFromPattern, type PatternAsked } from '../../../../core/starting/boat-from-pattern.ts';
import { newBoatDrawing } from '../../../../papers/starting/new-boat-drawing.ts';
import { StillDrawing } from '../../../drawing/still-drawing.tsx';
import type { Refusal } from '../../../workers/protocol.ts';
import { RefusalView } from '../../refusal-view.tsx';
import { WordsHere } from '../../words/words-here.tsx';
import { HullChoice } from './hull-choice.tsx';
import { MeasureField } from './measure-field.tsx';
import { askedBy, type MeasureTexts, typedMeasures } from './typed-measures.ts';
import { words } from './words.ts';
import './new-boat.css';

const sheet = { widthMm: 150, heightMm: 120 };

/** The boat that would be made, or what keeps her from it. */
const previewOf = (asked: PatternAsked) => {
  try {
    const boat = boatFromPattern(asked);
    return { boat, drawing: newBoatDrawing(boat, sheet) };
  } catch (cause) {
    if (cause instanceof UserError) return { refusal: { says: cause.says, whatToDo: cause.whatToDo } };
    throw cause;
  }
};

const Preview = ({ asked }: { asked: PatternAsked }): ReactNode => {
  const preview = useMemo(() => previewOf(asked), [asked]);
  if (preview.boat === undefined) return <RefusalView refusal={preview.refusal} />;
  const { places, ways } = preview.boat;
  return (
    <figure className="new-drawing">
      <StillDrawing drawing={preview.drawing} label={words.drawn(asked.name, places.length, ways.length)} />
      <figcaption className="quiet">{words.guessed(places.length, ways.length)}</figcaption>
    </figure>
  );
};

const Measures = ({
  pattern,
  onMake,
  says,
  isMaking,
}: {
  pattern: HullMeasuresId;
  onMake: (asked: PatternAsked) => void;
  says: string;
  isMaking: boolean;
}): ReactNode => {
  const [name, setName] = useState('');
  const [texts, setTexts] = useState<MeasureTexts>({});
  const measures = typedMeasures(pattern, texts);
  const asked = useMemo(
    () => askedBy({ pattern, name: name.trim() === '' ? words.unnamed : name.trim(), texts }),
    [pattern, name, texts],
  );
  const make = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const wrong = measures.findIndex(({ from }) => from === 'wrong');
    if (wrong === -1) onMake(asked);
    else event.currentTarget.querySelectorAll<HTMLInputElement>('.new-field input')[wrong + 1]?.focus();
  };
  return (
    <form className="new-measures" onSubmit={make}>
      <div className="new-fields">
        <div className="new-field new-name">
          <label>
            <span>{words.name}</span>
            <input
              value={name}
              autoComplete="off"
              maxLength={200}
              placeholder={words.unnamed}
              onChange={(event) => setName(event.target.value)}
            />
          </label>
        </div>
        {measures.map((measure) => (
          <MeasureField
            key={measure.key}
            measure={measure}
            text={texts[measure.key] ?? ''}
            onText={(text) => setTexts((old) => ({ ...old, [measure.key]: text }))}
          />
        ))}
        <button type="submit" className="make-button" disabled={isMaking}>
          {isMaking ? words.making : says}
        </button>
        <WordsHere texts={[]} names={Object.values(words.measure).map((name) => name.toLowerCase())} />
      </div>
      <Preview asked={asked} />
    </form>
  );
};

/** Chooses a hull pattern, types name and measures, and sees the boat that would be made. */
export const NewBoatForm = ({
  onMake,
  says,
  isMaking,
  refusal,
}: {
  onMake: (asked: PatternAsked) => void;
  /** what the button says */
  says: string;
  isMaking: boolean;
  refusal: Refusal | undefined;
}): ReactNode => {
  const [pattern, setPattern] = useState<HullMeasuresId | undefined>(undefined);
  return (
    <div className="new-boat">
      <HullChoice chosen={pattern} onChoose={setPattern} />
      {refusal === undefined ? null : <RefusalView refusal={refusal} />}
      {pattern === undefined ? (
        <p className="quiet">{words.chooseFirst}</p>
      ) : (
        <Measures pattern={pattern} onMake={onMake} says={says} isMaking={isMaking} />
      )}
      <WordsHere texts={Object.values(words.hull)} />
    </div>
  );
};
