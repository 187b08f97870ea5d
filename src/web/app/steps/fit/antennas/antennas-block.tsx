import { type ReactNode, useMemo } from 'react';
import { type AntennaRow, antennaRows } from '../../../../../papers/antennas/antenna-rows.ts';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { aboardCautions } from '../../../../../papers/power/caution-words.ts';
import { LitRows } from '../../../margin/lit-rows.tsx';
import { useWords } from '../../../words/units.ts';
import { CautionList } from '../../power/caution-list.tsx';
import type { StepMarginProps } from '../../step.ts';
import './antennas.css';
import { CoaxChoice } from './coax-choice.tsx';
import { PolarFigure } from './polar-figure.tsx';
import { words } from './words.ts';

/** Cautions of work at antennas, radar and mast. */
const own: ReadonlySet<string> = new Set(['radar', 'vhf-rf', 'aloft']);

/** Every antenna with its reach and the watts that arrive, its coax to be read or settled, and what each radar does not see. */
export const AntennasBlock = (given: StepMarginProps): ReactNode => {
  const { boat, plan, hand } = given;
  const rows = useMemo(() => antennaRows(cardBoat(boat), plan), [boat, plan]);
  const cautions = useMemo(() => aboardCautions(boat, plan, []).filter(({ id }) => own.has(id)), [boat, plan]);
  const say = useWords();
  const controls = ({ key: unit, what, more }: AntennaRow): ReactNode => (
    <>
      {more.length === 0 ? null : (
        <details className="why">
          <summary>
            {words.more}
            <span className="unseen"> {what}</span>
          </summary>
          <ul>
            {more.map((sentence) => (
              <li key={sentence}>{say(sentence)}</li>
            ))}
          </ul>
        </details>
      )}
      {plan.coax
        .filter(({ antenna }) => antenna === unit)
        .flatMap(({ pieces }) => pieces)
        .map((piece) => (
          <CoaxChoice key={piece.cable ?? piece.line} boat={boat} piece={piece} />
        ))}
      {plan.sites.some((site) => site.unit === unit && site.radar !== undefined) ? (
        <PolarFigure {...given} unit={unit} />
      ) : null}
    </>
  );
  return (
    <>
      <LitRows
        heading={words.heading}
        rows={rows.map((row) => ({ ...row, card: { kind: 'unit', id: row.key }, control: controls(row) }))}
        empty={words.none}
        hand={hand}
      />
      {rows.length === 0 ? null : <CautionList cautions={cautions} where="aloft" />}
    </>
  );
};
