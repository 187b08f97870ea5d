import type { ReactNode } from 'react';
import { windOffset } from '../../../../../core/fitting/sea/wind-offset.ts';
import { useEdit } from '../../../edit-context.ts';
import { BigField, Calculator, chosenUnit, UnitChoice } from './calculator.tsx';
import type { SeaProps } from './sea-props.ts';
import { trialOf } from './trial-of.ts';
import { figureOf } from './typed-figure.ts';
import { useKeptFields } from './use-kept-fields.ts';
import { words } from './words.ts';

const pairs = [1, 2, 3] as const;

const angleOf = (text: string): number | undefined => {
  const angle = figureOf(text);
  return angle === undefined || angle < 0 || angle > 180 ? undefined : angle;
};

/** The offset of a wind vane from both tacks. */
export const WindCalculator = ({ boat, unitsOf }: SeaProps): ReactNode => {
  const edit = useEdit();
  const fields = useKeptFields('wind', boat.name);
  const units = unitsOf('wind-sensor');
  const unit = chosenUnit(units, fields);
  const tacks = pairs.flatMap((pair) => {
    const onPortDeg = angleOf(fields.get(`port-${pair}`));
    const onStarboardDeg = angleOf(fields.get(`starboard-${pair}`));
    return onPortDeg === undefined || onStarboardDeg === undefined ? [] : [{ onPortDeg, onStarboardDeg }];
  });
  const found = windOffset(
    tacks.map(({ onPortDeg, onStarboardDeg }) => ({ portDeg: onPortDeg, starboardDeg: onStarboardDeg })),
  );
  const { sides } = words.wind;
  const said = (): { says: string; more: string[] } | undefined => {
    if (found === undefined) return undefined;
    const offset = Math.abs(found.offsetDeg).toFixed(1);
    const spread = words.wind.spread(found.spreadDeg.toFixed(1));
    if (found.turnedTo === 'neither') return { says: words.wind.none, more: [spread] };
    const other = found.turnedTo === 'port' ? sides.starboard : sides.port;
    return {
      says: words.wind.result(offset, sides[found.turnedTo]),
      more: [words.wind.type(offset, other), spread],
    };
  };
  return (
    <Calculator
      method="wind"
      title={words.wind.title}
      caution={words.wind.caution}
      isWanting={unit === undefined}
      result={said()}
      onWrite={
        found === undefined || unit === undefined
          ? undefined
          : () => {
              const trial = { ...trialOf('wind', unit.id), unit: unit.id, tacks };
              edit([{ edit: 'note-at-sea', params: { wind: trial } }]);
            }
      }
    >
      <UnitChoice units={units} fields={fields} />
      {pairs.flatMap((pair) => [
        <BigField key={`port-${pair}`} label={words.wind.port(pair)} name={`port-${pair}`} fields={fields} />,
        <BigField
          key={`starboard-${pair}`}
          label={words.wind.starboard(pair)}
          name={`starboard-${pair}`}
          fields={fields}
        />,
      ])}
    </Calculator>
  );
};
