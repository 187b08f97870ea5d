import type { ReactNode } from 'react';
import type { Place } from '../../../../core/boat/boat-schema.ts';
import type { EditCall } from '../../../../core/boat/history.ts';
import { useEdit } from '../../edit-context.ts';
import { parseCount, parseName, wrongNumber } from '../../forms/parse-typed.ts';
import { ChosenField, TickedField, TypedField } from '../../forms/typed-field.tsx';
import { parseSigned, shownLength } from '../../forms/typed-length.ts';
import { unitsChoice } from '../../words/units.ts';
import { words } from './words.ts';

const measures = [
  ['xM', words.forward],
  ['yM', words.starboard],
  ['zM', words.height],
] as const;

/** What is known of one place, to be changed. */
export const PlaceForm = ({ place }: { place: Place }): ReactNode => {
  const edit = useEdit();
  const units = unitsChoice.use();
  const change = (to: Omit<Extract<EditCall, { edit: 'change-place' }>['params'], 'place'>): void =>
    edit([{ edit: 'change-place', params: { place: place.id, ...to } }]);
  return (
    <section className="boat-form" data-form={place.id} aria-label={words.place(place.name)}>
      <h3>{words.place(place.name)}</h3>
      <TypedField
        label={words.name}
        name="name"
        shown={place.name}
        wrong={words.name}
        parse={parseName}
        onPut={(name) => change({ name })}
        wide
      />
      {measures.map(([axis, label]) => (
        <TypedField
          key={axis}
          label={label}
          name={axis}
          shown={shownLength(place[axis], units)}
          wrong={words.wrongLength}
          parse={parseSigned}
          onPut={(valueM) => edit([{ edit: 'move-places', params: { places: [{ place: place.id, [axis]: valueM }] } }])}
        />
      ))}
      <TypedField
        label={words.sole}
        name="soleZM"
        shown={place.soleZM === undefined ? '' : shownLength(place.soleZM, units)}
        wrong={words.wrongLength}
        parse={parseSigned}
        onPut={(soleZM) => change({ soleZM })}
      />
      <ChosenField
        label={words.exposure}
        value={place.exposure}
        options={words.exposures}
        onChoose={(exposure) => exposure !== undefined && change({ exposure })}
      />
      <ChosenField
        label={words.reach}
        value={place.reach}
        options={words.reaches}
        onChoose={(reach) => reach !== undefined && change({ reach })}
      />
      <TickedField label={words.tees} isTicked={place.tees} onTick={(tees) => change({ tees })} />
      <TypedField
        label={words.spares}
        name="spares"
        shown={String(place.spares ?? 0)}
        wrong={wrongNumber}
        parse={parseCount}
        onPut={(spares) => change({ spares })}
      />
    </section>
  );
};
