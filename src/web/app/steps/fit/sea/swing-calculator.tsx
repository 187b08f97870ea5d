import { type ReactNode, useMemo } from 'react';
import { deviationOf } from '../../../../../core/fitting/heading/deviation.ts';
import { type DeviationPoint, deviationCurve } from '../../../../../core/fitting/sea/deviation-curve.ts';
import { signedDegrees } from '../../../../../papers/settings-sheet/signed-degrees.ts';
import { useEdit } from '../../../edit-context.ts';
import { BigChoice, BigField, Calculator, chosenUnit, type Result, UnitChoice } from './calculator.tsx';
import { DeviationPicture } from './deviation-picture.tsx';
import type { SeaProps } from './sea-props.ts';
import { trialOf } from './trial-of.ts';
import { figureOf } from './typed-figure.ts';
import { type KeptFields, useKeptFields } from './use-kept-fields.ts';
import { words } from './words.ts';

const steps = [15, 30, 45] as const;

const headingsEvery = (step: number): number[] => Array.from({ length: 360 / step }, (_, at) => at * step);

const readings = (fields: KeptFields, headings: readonly number[]) =>
  headings.flatMap((magneticDeg) => {
    const compassDeg = figureOf(fields.get(`h-${magneticDeg}`));
    return compassDeg === undefined || compassDeg < 0 || compassDeg > 360 ? [] : [{ magneticDeg, compassDeg }];
  });

const resultOf = (curve: ReturnType<typeof deviationCurve>): Result | undefined => {
  if (curve === undefined) return undefined;
  const { a, b, c, d, e } = curve;
  const terms = words.swing.curve(
    signedDegrees(a),
    signedDegrees(b),
    signedDegrees(c),
    signedDegrees(d),
    signedDegrees(e),
  );
  return {
    says: words.swing.most(curve.mostDeg.toFixed(1)),
    more: [terms, words.swing.leaves(curve.residualDeg.toFixed(1))],
  };
};

/** The deviation table and curve of a compass from a swing. */
export const SwingCalculator = ({ boat, unitsOf }: SeaProps): ReactNode => {
  const edit = useEdit();
  const fields = useKeptFields('swing', boat.name);
  const units = unitsOf('steering-compass', 'heading-sensor');
  const unit = chosenUnit(units, fields);
  const step = steps.find((one) => String(one) === fields.get('step')) ?? 30;
  const electronics: 'off' | 'on' = fields.get('electronics') === 'off' ? 'off' : 'on';
  const points = readings(fields, headingsEvery(step));
  const found: DeviationPoint[] = points.map(({ magneticDeg, compassDeg }) => ({
    headingDeg: magneticDeg,
    deviationDeg: deviationOf({ magneticDeg, compassDeg }).deviationDeg,
  }));
  const key = JSON.stringify(found);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key tells all the points
  const curve = useMemo(() => deviationCurve(found), [key]);
  const write = (): void => {
    if (unit === undefined) return;
    const trial = { ...trialOf(`swing-${electronics}`, unit.id), unit: unit.id, electronics, points };
    edit([{ edit: 'note-at-sea', params: { swing: trial } }]);
  };
  return (
    <Calculator
      method="swing"
      title={words.swing.title}
      caution={words.swing.caution}
      isWanting={unit === undefined}
      result={resultOf(curve)}
      missing={words.swing.needs}
      onWrite={unit === undefined || points.length === 0 ? undefined : write}
      picture={found.length === 0 ? null : <DeviationPicture points={found} curve={curve} />}
    >
      <UnitChoice units={units} fields={fields} />
      <BigChoice
        label={words.swing.electronics}
        name="electronics"
        fields={fields}
        choices={[
          ['on', words.swing.on],
          ['off', words.swing.off],
        ]}
      />
      <BigChoice
        label={words.swing.step}
        name="step"
        fields={fields}
        none={words.swing.degrees(30)}
        choices={[
          ['15', words.swing.degrees(15)],
          ['45', words.swing.degrees(45)],
        ]}
      />
      {headingsEvery(step).map((heading) => (
        <BigField key={heading} label={words.swing.reads(heading)} name={`h-${heading}`} fields={fields} />
      ))}
    </Calculator>
  );
};
