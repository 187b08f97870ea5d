import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { ScreenUnits } from '../../../../../core/boat/measures.ts';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { useEdit } from '../../../edit-context.ts';
import { words } from './words.ts';

const screenKinds = ['display', 'plotter', 'instrument', 'sounder'];

/** The units a screen may count each thing in, as the boat file takes them. */
const choices = {
  depth: ['m', 'ft', 'fm'],
  height: ['m', 'ft'],
  speed: ['kn', 'mph', 'km/h'],
  wind: ['kn', 'm/s', 'mph', 'km/h'],
  temperature: ['°C', '°F'],
} as const satisfies {
  readonly [What in Exclude<keyof ScreenUnits, 'unit'>]: readonly NonNullable<ScreenUnits[What]>[];
};

type What = keyof typeof choices;
// reason: the keys of this record are what is shown
const whats = Object.keys(choices) as What[];

const OneScreen = ({ unit, own }: { unit: Boat['kit'][number]; own: ScreenUnits | undefined }): ReactNode => {
  const edit = useEdit();
  const change = (what: What, chosen: string): void => {
    const { [what]: _, ...others } = own ?? { unit: unit.id };
    const value = choices[what].find((one) => one === chosen);
    edit([
      {
        edit: 'set-screen-units',
        params: { ...others, unit: unit.id, ...(value === undefined ? {} : { [what]: value }) },
      },
    ]);
  };
  return (
    <fieldset className="sheet-units">
      <legend>{unit.name}</legend>
      {whats.map((what) => (
        <label key={what}>
          <span>{words.shows[what]}</span>
          <select value={own?.[what] ?? ''} onChange={({ target }) => change(what, target.value)}>
            <option value="">…</option>
            {choices[what].map((one) => (
              <option key={one} value={one}>
                {one}
              </option>
            ))}
          </select>
        </label>
      ))}
    </fieldset>
  );
};

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
      {screens.map((unit) => (
        <OneScreen key={unit.id} unit={unit} own={known.get(unit.id)} />
      ))}
    </details>
  );
};
