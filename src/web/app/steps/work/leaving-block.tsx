import { type ReactNode, useMemo } from 'react';
import { leavingRows } from '../../../../papers/work/leaving-rows.ts';
import { useEdit } from '../../edit-context.ts';
import { ChosenField } from '../../forms/typed-field.tsx';
import type { StepMarginProps } from '../step.ts';
import { Tick } from './day-paper.tsx';
import { useWork } from './use-work.ts';
import { words } from './words.ts';

/** The old kit: what becomes of each, and what is done before it leaves; nothing does before the sea trial has passed. */
export const LeavingBlock = ({ boat, plan }: StepMarginProps): ReactNode => {
  const edit = useEdit();
  const { work, input, log, append } = useWork(boat, plan);
  const rows = useMemo(
    () => (input === undefined ? [] : leavingRows(input.names, work?.leaving ?? [], log)),
    [input, work, log],
  );
  if (rows.length === 0) return null;
  return (
    <section className="block work-block">
      <h2>{words.leaving}</h2>
      <p className="quiet">{words.leavingAbout}</p>
      {rows.map(({ unit, name, to, fate, kept, steps, mayGo }) => (
        <details key={unit} className="work-fold">
          <summary>{words.leavingHead(name, mayGo ? words.mayGo : fate)}</summary>
          <p className="quiet">{words.stands(kept)}</p>
          <ChosenField
            label={words.becomes}
            of={name}
            value={to}
            options={words.fates}
            none={words.nobodySaid}
            onChoose={(next) =>
              edit([
                {
                  edit: 'set-leaving',
                  params: { unit, ...(next === undefined ? {} : { to: next }), ...withOf(boat.work?.leaving, unit) },
                },
              ])
            }
          />
          {steps.map(({ id, tick, says }) => (
            <Tick key={id} log={log} append={append} of={tick} says={says} what={name} />
          ))}
        </details>
      ))}
    </section>
  );
};

type Leavings = NonNullable<NonNullable<StepMarginProps['boat']['work']>['leaving']>;

/** The cables that were said to go with a unit stay said. */
const withOf = (leaving: Leavings | undefined, unit: string): { with?: string[] } => {
  const cables = leaving?.find((one) => one.unit === unit)?.with;
  return cables === undefined ? {} : { with: [...cables] };
};
