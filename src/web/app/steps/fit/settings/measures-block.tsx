import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import { shortName } from '../../../../../core/boat/short-name.ts';
import { settingFigures } from '../../../../../core/facts/setting-figures.ts';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { useEdit } from '../../../edit-context.ts';
import { TypedField } from '../../../forms/typed-field.tsx';
import { parseTyped, shownLength } from '../../../forms/typed-length.ts';
import { unitsChoice } from '../../../words/units.ts';
import type { StepMarginProps } from '../../step.ts';
import { AirDraftParts } from './air-draft-parts.tsx';
import { ScreenUnitsFields } from './screen-units-fields.tsx';
import { words } from './words.ts';

const margins = [
  ['wavesM', words.waves, 'waves-and-squat'],
  ['doubtM', words.doubt, 'depth-doubt'],
  ['overheadM', words.overhead, 'overhead-margin'],
] as const;

/** What is added to the draft, and what is to stay free above the mast. */
const MarginFields = ({ boat }: { boat: Boat }): ReactNode => {
  const edit = useEdit();
  const units = unitsChoice.use();
  return margins.map(([name, label, usual]) => (
    <TypedField
      key={name}
      label={label}
      name={name}
      shown={shownLength(boat.measures?.[name] ?? settingFigures[usual].value, units)}
      wrong={words.lengthWrong}
      parse={parseTyped}
      onPut={(valueM) => edit([{ edit: 'set-measures', params: { [name]: valueM } }])}
    />
  ));
};

/** A sounder stands for its transducer only where that is no unit of its own. */
const depthKinds: readonly (readonly string[])[] = [['depth-sensor', 'transducer'], ['sounder']];

/** How deep each transducer lies below the water. */
const TransducerFields = ({ boat }: { boat: Boat }): ReactNode => {
  const edit = useEdit();
  const units = unitsChoice.use();
  const { sheetOf } = useMemo(() => cardBoat(boat), [boat]);
  const stay = boat.kit.filter(({ fate }) => fate !== 'goes');
  const sensors =
    depthKinds
      .map((kinds) => stay.filter(({ id }) => kinds.includes(sheetOf.get(id)?.kind ?? '')))
      .find(({ length }) => length > 0) ?? [];
  if (sensors.length === 0) return <p className="quiet">{words.noTransducer}</p>;
  return sensors.map(({ id, name }) => {
    const known = boat.measures?.transducers?.find(({ unit }) => unit === id);
    return (
      <TypedField
        key={id}
        label={words.transducer(shortName(name))}
        name={`below-${id}`}
        shown={known === undefined ? '' : shownLength(known.below.valueM, units)}
        wrong={words.lengthWrong}
        parse={parseTyped}
        onPut={(valueM) => edit([{ edit: 'set-transducer', params: { unit: id, below: { valueM, how: 'taped' } } }])}
      />
    );
  });
};

/** The boat's own measures that settings are computed from. */
export const MeasuresBlock = ({ boat, plan }: StepMarginProps): ReactNode => (
  <section className="block sheet-fields">
    <h2>{words.measures}</h2>
    <p className="quiet">{words.measuresIntro}</p>
    <MarginFields boat={boat} />
    <TransducerFields boat={boat} />
    <AirDraftParts boat={boat} plan={plan} />
    <ScreenUnitsFields boat={boat} />
  </section>
);
