import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { ScreenUnits } from '../../../../../core/boat/measures.ts';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { useEdit } from '../../../edit-context.ts';
import { DescribedFields, type FieldOf } from '../../../forms/described.tsx';
import { words } from './words.ts';

const screenKinds = ['display', 'plotter', 'instrument', 'sounder'];

/** The units a screen may count each thing in, as the boat file takes them. */
const fields: readonly FieldOf<ScreenUnits>[] = [
  { key: 'depth', label: words.shows.depth, ask: 'choice', choices: { m: 'm', ft: 'ft', fm: 'fm' } },
  { key: 'height', label: words.shows.height, ask: 'choice', choices: { m: 'm', ft: 'ft' } },
  { key: 'speed', label: words.shows.speed, ask: 'choice', choices: { kn: 'kn', mph: 'mph', 'km/h': 'km/h' } },
  {
    key: 'wind',
    label: words.shows.wind,
    ask: 'choice',
    choices: { kn: 'kn', 'm/s': 'm/s', mph: 'mph', 'km/h': 'km/h' },
  },
  { key: 'temperature', label: words.shows.temperature, ask: 'choice', choices: { '°C': '°C', '°F': '°F' } },
];

/** In what units each screen aboard shows things. */
export const ScreenUnitsFields = ({ boat }: { boat: Boat }): ReactNode => {
  const edit = useEdit();
  const { sheetOf } = useMemo(() => cardBoat(boat), [boat]);
  const screens = boat.kit.filter(
    ({ id, fate }) => fate !== 'goes' && screenKinds.includes(sheetOf.get(id)?.kind ?? ''),
  );
  const known = new Map((boat.measures?.screens ?? []).map((own) => [own.unit, own]));
  const unseen = screens.filter(({ id }) => !known.has(id));
  return (
    <details className="why">
      <summary>{words.screens}</summary>
      {screens.length === 0 ? <p className="quiet">{words.noScreens}</p> : null}
      {unseen.length === 0 ? null : (
        <button
          type="button"
          className="press-link"
          onClick={() =>
            edit(
              unseen.map(({ id: unit }) => ({
                edit: 'set-screen-units',
                params: { unit, depth: 'm', height: 'm', speed: 'kn', wind: 'kn', temperature: '°C' },
              })),
            )
          }
        >
          {words.allMetric}
        </button>
      )}
      {screens.map(({ id, name }) => (
        <fieldset key={id} className="sheet-screen">
          <legend>{name}</legend>
          <div className="form-fields">
            <DescribedFields<ScreenUnits>
              of={known.get(id) ?? { unit: id }}
              fields={fields}
              onOf={(shown) => edit([{ edit: 'set-screen-units', params: shown }])}
            />
          </div>
        </fieldset>
      ))}
    </details>
  );
};
