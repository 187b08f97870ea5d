import { type ReactNode, type SubmitEvent, useId, useState } from 'react';
import type { BoatIndex } from '../../../../../core/boat/boat-index.ts';
import { answerEdit, type WalkAnswer } from '../../../../../core/walk-round/answer-edits.ts';
import type { WalkQuestion } from '../../../../../core/walk-round/walk-question.ts';
import { useEdit } from '../../../edit-context.ts';
import { TapeField } from '../tape-field.tsx';
import { PhotoField } from './photo-field.tsx';
import { words } from './words.ts';

type OnAnswer = (answer: WalkAnswer) => void;
type Option = readonly [says: string, answer: WalkAnswer];

/** Answers to choose from by one press. */
const Options = ({
  options,
  what,
  onAnswer,
}: {
  options: readonly Option[];
  what: string;
  onAnswer: OnAnswer;
}): ReactNode => (
  <fieldset className="walk-options">
    <legend className="unseen">{what}</legend>
    {options.map(([says, answer]) => (
      <button key={says} type="button" onClick={() => onAnswer(answer)}>
        {says}
      </button>
    ))}
  </fieldset>
);

const numberIn = (form: HTMLFormElement, name: string): number =>
  Number(
    String(new FormData(form).get(name) ?? '')
      .trim()
      .replace(',', '.') || Number.NaN,
  );

/** A number with its unit, and what may be chosen beside it. */
const NumberField = ({
  what,
  unit,
  isGood,
  wrong,
  answerOf,
  choices,
  onAnswer,
}: {
  what: string;
  unit: string;
  isGood: (value: number, chosen: string) => boolean;
  wrong: string;
  answerOf: (value: number, chosen: string) => WalkAnswer;
  choices?: readonly (readonly [value: string, says: string])[];
  onAnswer: OnAnswer;
}): ReactNode => {
  const help = useId();
  const [isWrong, setIsWrong] = useState(false);
  const put = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const value = numberIn(event.currentTarget, 'value');
    const chosen = String(new FormData(event.currentTarget).get('chosen') ?? '');
    setIsWrong(!isGood(value, chosen));
    if (isGood(value, chosen)) onAnswer(answerOf(value, chosen));
  };
  return (
    <form className="walk-field" onSubmit={put}>
      {choices === undefined ? null : (
        <select name="chosen" aria-label={what}>
          {choices.map(([value, says]) => (
            <option key={value} value={value}>
              {says}
            </option>
          ))}
        </select>
      )}
      <input
        name="value"
        inputMode="decimal"
        autoComplete="off"
        aria-label={`${what}, ${unit}`}
        placeholder={unit}
        aria-invalid={isWrong}
        aria-describedby={isWrong ? help : undefined}
      />
      <button type="submit" aria-label={words.putInFor(what)}>
        {words.putIn}
      </button>
      {isWrong ? (
        <p id={help} role="alert">
          {wrong}
        </p>
      ) : null}
    </form>
  );
};

/** One of several to pick from a list. */
const PickField = ({
  what,
  picks,
  answerOf,
  onAnswer,
}: {
  what: string;
  picks: readonly (readonly [id: string, says: string])[];
  answerOf: (id: string) => WalkAnswer;
  onAnswer: OnAnswer;
}): ReactNode => (
  <select
    className="walk-pick"
    aria-label={what}
    value=""
    onChange={(event) => {
      if (event.target.value !== '') onAnswer(answerOf(event.target.value));
    }}
  >
    <option value="">{words.choose}</option>
    {picks.map(([id, says]) => (
      <option key={id} value={id}>
        {says}
      </option>
    ))}
  </select>
);

const yesNo = (answerOf: (has: boolean) => WalkAnswer): readonly Option[] => [
  [words.yes, answerOf(true)],
  [words.no, answerOf(false)],
];

const partedKinds = ['switch', 'relay', 'diode', 'dcdc', 'apart', 'nothing'] as const;
const guardKinds = ['fuse', 'breaker', 'none'] as const;

const circuitsOf = ({ boat }: BoatIndex) =>
  boat.supply.panels.flatMap(({ id, circuits }) =>
    circuits.map((circuit) => [`${id}.${circuit.id}`, `${circuit.name ?? circuit.id}, ${circuit.ratingA} A`] as const),
  );

/** The supply port of a unit that no circuit feeds yet. */
const unfedPort = (index: BoatIndex, unit: string): string | undefined => {
  const fed = new Set(index.boat.supply.panels.flatMap(({ circuits }) => circuits.flatMap(({ feeds }) => feeds)));
  return index.sheetOf
    .get(unit)
    ?.ports.filter(({ protocol, role }) => protocol === 'dc' && role !== 'talk')
    .map(({ id }) => `${unit}.${id}`)
    .find((port) => !fed.has(port));
};

/** What takes the answer to a question of the walk; nothing for what is written on the form or photographed. */
export const AnswerField = ({
  index,
  question,
  what,
}: {
  index: BoatIndex;
  question: WalkQuestion;
  /** the question, for those who hear it */
  what: string;
}): ReactNode => {
  const edit = useEdit();
  const onAnswer: OnAnswer = (answer) => edit([answerEdit(answer)]);
  const { kind, about } = question;
  switch (kind) {
    case 'photos':
      return <PhotoField boat={index.boat} unit={about} name={index.kit.get(about)?.name ?? about} />;
    case 'way-length': {
      const way = index.ways.get(about);
      return way === undefined ? null : <TapeField way={way} name={what} />;
    }
    case 'way-seen':
      return (
        <Options
          what={what}
          onAnswer={onAnswer}
          options={[
            [words.seen, { kind, way: about, known: 'seen' }],
            [words.pulled, { kind, way: about, known: 'pulled' }],
          ]}
        />
      );
    case 'way-bore':
      return (
        <NumberField
          what={what}
          unit={words.millimetres}
          isGood={(mm) => mm > 0 && mm <= 1000}
          wrong={words.wrongNumber}
          answerOf={(mm) => ({ kind, way: about, mm })}
          onAnswer={onAnswer}
        />
      );
    case 'terminator':
      return <Options what={what} onAnswer={onAnswer} options={yesNo((has) => ({ kind, unit: about, has }))} />;
    case 'breaker': {
      const port = unfedPort(index, about);
      return port === undefined ? null : (
        <PickField
          what={what}
          picks={circuitsOf(index)}
          answerOf={(circuit) => ({ kind, port, circuit })}
          onAnswer={onAnswer}
        />
      );
    }
    case 'bank-fuse':
      return (
        <NumberField
          what={what}
          unit={words.amperes}
          choices={guardKinds.map((guard) => [guard, words.guard[guard]])}
          isGood={(value, chosen) => chosen === 'none' || (value > 0 && value <= 10_000)}
          wrong={words.wrongNumber}
          answerOf={(ratingA, chosen) => {
            const of = guardKinds.find((guard) => guard === chosen) ?? 'fuse';
            return { kind, bank: about, main: { kind: of, ...(of === 'none' ? {} : { ratingA }) } };
          }}
          onAnswer={onAnswer}
        />
      );
    case 'bank-switch':
      return <Options what={what} onAnswer={onAnswer} options={yesNo((has) => ({ kind, bank: about, has }))} />;
    case 'bank-parted':
      return (
        <Options
          what={what}
          onAnswer={onAnswer}
          options={partedKinds.map((by) => [words.parted[by], { kind, bank: about, by }])}
        />
      );
    case 'negative':
      return (
        <PickField
          what={what}
          picks={index.boat.places.map(({ id, name }) => [id, name])}
          answerOf={(place) => ({ kind, place })}
          onAnswer={onAnswer}
        />
      );
    case 'panel-circuits':
      return (
        <NumberField
          what={what}
          unit={words.free}
          isGood={(free) => Number.isInteger(free) && free >= 0 && free <= 200}
          wrong={words.wrongCount}
          answerOf={(free) => ({ kind, panel: about, free })}
          onAnswer={onAnswer}
        />
      );
    default:
      return null;
  }
};
