import { type ReactNode, useMemo } from 'react';
import { feelsSpeed } from '../../../../../core/fitting/feels-speed.ts';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { seaRows } from '../../../../../papers/settings-sheet/sea-rows.ts';
import { useEdit } from '../../../edit-context.ts';
import { LitRows } from '../../../margin/lit-rows.tsx';
import type { StepMarginProps } from '../../step.ts';
import { BridgeCalculator } from './bridge-calculator.tsx';
import { LeadCalculator } from './lead-calculator.tsx';
import { LogCalculator } from './log-calculator.tsx';
import './sea-block.css';
import { SwingCalculator } from './swing-calculator.tsx';
import { WindCalculator } from './wind-calculator.tsx';
import { words } from './words.ts';

/** What was tried so far, each to be taken back. */
const Tried = ({ boat, plan, hand }: Pick<StepMarginProps, 'boat' | 'plan' | 'hand'>): ReactNode => {
  const edit = useEdit();
  const rows = useMemo(() => seaRows(cardBoat(boat).kit, plan), [boat, plan]);
  if (rows.length === 0) return null;
  return (
    <LitRows
      heading={words.tried}
      rows={rows.map(({ key, kind, id, what, found, on }) => ({
        key,
        what: `${what}, ${on}`,
        fact: found,
        lights: [],
        control: (
          <button
            type="button"
            className="press-link"
            onClick={() => edit([{ edit: 'take-back-at-sea', params: { kind, id } }])}
          >
            {words.takeBack}
            <span className="unseen"> {what}</span>
          </button>
        ),
      }))}
      empty=""
      hand={hand}
    />
  );
};

/** The calculators used at sea, in the order of the trials, and what was written down with them. */
export const SeaBlock = ({ boat, plan, hand }: StepMarginProps): ReactNode => {
  const { sheetOf } = useMemo(() => cardBoat(boat), [boat]);
  const stay = boat.kit.filter(({ fate }) => fate !== 'goes');
  const unitsOf = (...kinds: readonly string[]) =>
    kinds.flatMap((kind) => stay.filter(({ id }) => sheetOf.get(id)?.kind === kind));
  const logs = stay.filter(({ id }) => {
    const sheet = sheetOf.get(id);
    return sheet !== undefined && feelsSpeed(sheet);
  });
  const given = { boat, plan, unitsOf, logs };
  return (
    <>
      <section className="block sea-block">
        <h2>{words.heading}</h2>
        <p className="quiet">{words.intro}</p>
        <SwingCalculator {...given} />
        <LeadCalculator {...given} />
        <LogCalculator {...given} />
        <WindCalculator {...given} />
        <BridgeCalculator {...given} />
      </section>
      <Tried boat={boat} plan={plan} hand={hand} />
    </>
  );
};
