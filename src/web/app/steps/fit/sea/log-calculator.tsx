import type { ReactNode } from 'react';
import { logFactor } from '../../../../../core/fitting/sea/log-factor.ts';
import { logRuns } from '../../../../../core/fitting/sea/log-runs.ts';
import { useEdit } from '../../../edit-context.ts';
import { BigField, Calculator, chosenUnit, UnitChoice } from './calculator.tsx';
import type { SeaProps } from './sea-props.ts';
import { trialOf } from './trial-of.ts';
import { amountOf, secondsOf } from './typed-figure.ts';
import { useKeptFields } from './use-kept-fields.ts';
import { words } from './words.ts';

const turns = [1, 2, 3, 4] as const;

/** The factor of a log from runs to and fro. */
export const LogCalculator = ({ boat, logs: units }: SeaProps): ReactNode => {
  const edit = useEdit();
  const fields = useKeptFields('log', boat.name);
  const unit = chosenUnit(units, fields);
  const distanceNm = amountOf(fields.get('distance'));
  const factorBefore = amountOf(fields.get('factor') === '' ? '1' : fields.get('factor'));
  const runs = turns.flatMap((turn) => {
    const seconds = secondsOf(fields.get(`seconds-${turn}`));
    const indicatedKn = amountOf(fields.get(`shown-${turn}`));
    return seconds === undefined || indicatedKn === undefined ? [] : [{ seconds, indicatedKn }];
  });
  const found = distanceNm === undefined ? undefined : logRuns({ distanceNm, runs });
  const isWhole = found !== undefined && factorBefore !== undefined && distanceNm !== undefined;
  return (
    <Calculator
      method="log"
      title={words.log.title}
      caution={words.log.caution}
      isWanting={unit === undefined}
      result={
        isWhole
          ? {
              says: words.log.result(logFactor({ factorBefore, ...found }).toFixed(2)),
              more: [words.log.speeds(found.trueKn.toFixed(2), found.indicatedKn.toFixed(2))],
            }
          : undefined
      }
      onWrite={
        !isWhole || unit === undefined
          ? undefined
          : () => {
              const trial = { ...trialOf('log', unit.id), unit: unit.id, distanceNm, runs, factorBefore };
              edit([{ edit: 'note-at-sea', params: { log: trial } }]);
            }
      }
    >
      <UnitChoice units={units} fields={fields} />
      <BigField label={words.log.distance} name="distance" fields={fields} hint="1" />
      <BigField label={words.log.factor} name="factor" fields={fields} hint="1.00" />
      {turns.flatMap((turn) => [
        <BigField
          key={`seconds-${turn}`}
          label={words.log.seconds(turn)}
          name={`seconds-${turn}`}
          fields={fields}
          hint={words.log.clock}
          isText
        />,
        <BigField key={`shown-${turn}`} label={words.log.indicated(turn)} name={`shown-${turn}`} fields={fields} />,
      ])}
    </Calculator>
  );
};
