import { type ReactNode, useState } from 'react';
import type { Boat, Kit } from '../../../../core/boat/boat-schema.ts';
import type { EditCall } from '../../../../core/boat/history.ts';
import { useEdit } from '../../edit-context.ts';
import { LitRows } from '../../margin/lit-rows.tsx';
import type { StepMarginProps } from '../step.ts';
import { PhaseChoice } from './phase-choice.tsx';
import { UnitTools } from './unit-tools.tsx';
import { words } from './words.ts';

const fates = ['comes', 'stays', 'goes'] as const;
const headings = { comes: words.comes, stays: words.stays, goes: words.goes };
const empties = { comes: words.noneComes, stays: words.noneStays, goes: words.noneGoes };
const phases = [1, 2, 3, 4, 5, 6, 7, 8, 9];

type Chosen = ReadonlySet<string>;

const fateCall = ({ id, phase }: Kit, fate: Kit['fate']): EditCall => ({
  edit: 'set-fate',
  params: { unit: id, fate, ...(phase === undefined ? {} : { phase }) },
});

const phaseCall = ({ id, fate }: Kit, phase: number): EditCall => ({
  edit: 'set-fate',
  params: { unit: id, fate, ...(phase === 1 ? {} : { phase }) },
});

const fateOf = (value: string): Kit['fate'] => fates.find((fate) => fate === value) ?? 'comes';

/** The row of one unit: chosen or not, what becomes of it, in which phase, and more. */
const UnitControl = ({
  boat,
  unit,
  isChosen,
  onChoose,
}: {
  boat: Boat;
  unit: Kit;
  isChosen: boolean;
  onChoose: (isChosen: boolean) => void;
}): ReactNode => {
  const edit = useEdit();
  const [isOpen, setIsOpen] = useState(false);
  return (
    <>
      <div className="kit-row">
        <label className="kit-tick">
          <input
            type="checkbox"
            aria-label={words.choose(unit.name)}
            checked={isChosen}
            onChange={({ target }) => onChoose(target.checked)}
          />
        </label>
        <select
          aria-label={words.becomes(unit.name)}
          value={unit.fate}
          onChange={({ target }) => edit([fateCall(unit, fateOf(target.value))])}
        >
          {fates.map((fate) => (
            <option key={fate} value={fate}>
              {words.fates[fate]}
            </option>
          ))}
        </select>
        {unit.fate === 'stays' ? null : (
          <PhaseChoice
            label={words.phaseOf(unit.name)}
            phase={unit.phase ?? 1}
            shown={words.phaseShort}
            onPhase={(phase) => edit([phaseCall(unit, phase)])}
          />
        )}
        <button
          type="button"
          className="press-link"
          aria-expanded={isOpen}
          aria-label={words.toolsOf(unit.name)}
          onClick={() => setIsOpen(!isOpen)}
        >
          {words.tools}
        </button>
      </div>
      {isOpen ? <UnitTools boat={boat} unit={unit} /> : null}
    </>
  );
};

/** What can be done with several units at once, as one step. */
const ChosenTools = ({ units, onNone }: { units: readonly Kit[]; onNone: () => void }): ReactNode => {
  const edit = useEdit();
  const count = units.length;
  return (
    <section className="block kit-chosen" aria-label={words.chosen(count)}>
      <p>{words.chosen(count)}</p>
      <p className="kit-presses">
        {fates.map((fate) => (
          <button
            key={fate}
            type="button"
            className="press-link"
            onClick={() =>
              edit(
                units.map((unit) => fateCall(unit, fate)),
                words.chosenTitle(count, words.fates[fate]),
              )
            }
          >
            {words.fates[fate]}
          </button>
        ))}
        <select
          aria-label={words.phase}
          value=""
          onChange={({ target }) => {
            const phase = Number(target.value);
            if (phase > 0)
              edit(
                units.map((unit) => phaseCall(unit, phase)),
                words.chosenPhase(count, phase),
              );
          }}
        >
          <option value="">{words.phase}</option>
          {phases.map((phase) => (
            <option key={phase}>{phase}</option>
          ))}
        </select>
        <button
          type="button"
          className="press-link"
          onClick={() => {
            onNone();
            edit(
              units.map(({ id }) => ({ edit: 'remove-unit', params: { unit: id } })),
              words.chosenOut(count),
            );
          }}
        >
          {words.takeOut}
        </button>
        <button type="button" className="press-link" onClick={onNone}>
          {words.chooseNone}
        </button>
      </p>
    </section>
  );
};

const noneChosen: Chosen = new Set();

/** The kit by what becomes of it, each unit to be changed where it stands, several at once where they are chosen. */
export const KitBlock = ({ boat, hand }: Pick<StepMarginProps, 'boat' | 'hand'>): ReactNode => {
  const [chosen, setChosen] = useState(noneChosen);
  const names = new Map(boat.places.map((place) => [place.id, place.name]));
  const units = boat.kit.filter(({ id }) => chosen.has(id));
  const choose = (id: string, isChosen: boolean): void => {
    const next = new Set(chosen);
    if (isChosen) next.add(id);
    else next.delete(id);
    setChosen(next);
  };
  return (
    <>
      {units.length === 0 ? null : <ChosenTools units={units} onNone={() => setChosen(noneChosen)} />}
      {fates.map((fate) => (
        <LitRows
          key={fate}
          heading={headings[fate]}
          rows={boat.kit
            .filter((unit) => unit.fate === fate)
            .map((unit) => ({
              key: unit.id,
              what: unit.name,
              fact: names.get(unit.place) ?? unit.place,
              lights: [unit.id],
              card: { kind: 'unit', id: unit.id } as const,
              control: (
                <UnitControl
                  boat={boat}
                  unit={unit}
                  isChosen={chosen.has(unit.id)}
                  onChoose={(isChosen) => choose(unit.id, isChosen)}
                />
              ),
            }))}
          empty={empties[fate]}
          hand={hand}
        />
      ))}
    </>
  );
};
