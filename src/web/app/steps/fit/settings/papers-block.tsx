import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { paperRows } from '../../../../../papers/settings-sheet/paper-rows.ts';
import { useEdit } from '../../../edit-context.ts';
import { parseCount, wrongNumber } from '../../../forms/parse-typed.ts';
import { ChosenField, TypedField } from '../../../forms/typed-field.tsx';
import { LitRows } from '../../../margin/lit-rows.tsx';
import { todayIso } from '../../binder/today-iso.ts';
import type { StepMarginProps } from '../../step.ts';
import { ShipFields } from './ship-fields.tsx';
import { words } from './words.ts';

type PaperId = ReturnType<typeof paperRows>[number]['key'];

const PaperFields = ({ boat, paper, name }: { boat: Boat; paper: PaperId; name: string }): ReactNode => {
  const edit = useEdit();
  const stands = boat.papers?.paperwork?.find((entry) => entry.paper === paper);
  return (
    <>
      <ChosenField
        label={words.paperState}
        of={name}
        value={stands?.state}
        options={words.states}
        none={words.notStarted}
        onChoose={(state) => {
          const kept = stands?.waitDays === undefined ? {} : { waitDays: stands.waitDays };
          const now = state === undefined ? {} : { stands: { state, on: todayIso(), ...kept } };
          edit([{ edit: 'note-paperwork', params: { paper, ...now } }]);
        }}
      />
      {stands?.state === 'asked' ? (
        <TypedField
          label={words.waitDays}
          of={name}
          name={`wait-${paper}`}
          shown={stands.waitDays === undefined ? '' : String(stands.waitDays)}
          wrong={wrongNumber}
          parse={parseCount}
          onPut={(waitDays) => {
            const { paper: _, ...before } = stands;
            edit([{ edit: 'note-paperwork', params: { paper, stands: { ...before, waitDays } } }]);
          }}
        />
      ) : null}
    </>
  );
};

/** The papers her radios ask for, where each stands, and what the law wants to know of her. */
export const PapersBlock = ({ boat, plan, hand }: StepMarginProps): ReactNode => {
  const rows = useMemo(() => paperRows(cardBoat(boat).kit, plan), [boat, plan]);
  return (
    <>
      <LitRows
        heading={words.papers}
        rows={rows.map(({ key, what, stands, waits, does }) => ({
          key,
          what,
          fact: [stands, waits].filter((part) => part !== '').join('; '),
          lights: plan.shipPapers.find(({ paper }) => paper === key)?.for ?? [],
          control: (
            <details className="why">
              <summary>{does}</summary>
              <PaperFields boat={boat} paper={key} name={what} />
            </details>
          ),
        }))}
        empty={words.noPapers}
        hand={hand}
      />
      {rows.length === 0 ? null : (
        <section className="block sheet-fields">
          <p className="quiet">{words.papersIntro}</p>
          <ShipFields boat={boat} />
        </section>
      )}
    </>
  );
};
