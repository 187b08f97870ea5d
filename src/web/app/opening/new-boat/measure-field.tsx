import { type ReactNode, useId } from 'react';
import { printLength } from '../../../../core/units/print-length.ts';
import { inBothUnits } from '../../../../papers/starting/in-both-units.ts';
import type { TypedMeasure } from './typed-measures.ts';
import { words } from './words.ts';

const echoOf = ({ from, valueM }: TypedMeasure): string => {
  if (from === 'wrong') return words.wrong;
  const length = inBothUnits(valueM);
  return from === 'typed' ? words.typed(length) : words.suggested(length);
};

/** One measure, typed in either unit, with what counts under it in both. */
export const MeasureField = ({
  measure,
  text,
  onText,
}: {
  measure: TypedMeasure;
  text: string;
  onText: (text: string) => void;
}): ReactNode => {
  const echo = useId();
  const isWrong = measure.from === 'wrong';
  return (
    <div className="new-field">
      <label>
        <span>{words.measure[measure.key]}</span>
        <input
          value={text}
          autoComplete="off"
          placeholder={printLength({ valueM: measure.valueM, as: 'metres' })}
          aria-invalid={isWrong}
          aria-describedby={echo}
          onChange={(event) => onText(event.target.value)}
        />
      </label>
      <p id={echo} className={isWrong ? 'new-echo new-wrong' : 'new-echo'} aria-live="polite">
        {echoOf(measure)}
      </p>
    </div>
  );
};
