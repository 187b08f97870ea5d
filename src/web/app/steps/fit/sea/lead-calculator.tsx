import type { ReactNode } from 'react';
import { leadLine } from '../../../../../core/fitting/sea/lead-line.ts';
import { useEdit } from '../../../edit-context.ts';
import { parseSigned } from '../../../forms/typed-length.ts';
import { BigField, Calculator, chosenUnit, UnitChoice } from './calculator.tsx';
import type { SeaProps } from './sea-props.ts';
import { trialOf } from './trial-of.ts';
import { useKeptFields } from './use-kept-fields.ts';
import { words } from './words.ts';

const metres = (valueM: number): string => `${valueM.toFixed(2).replace('-', '−')} m`;

/** The depth offset by a lead line beside the transducer. */
export const LeadCalculator = ({ boat, unitsOf }: SeaProps): ReactNode => {
  const edit = useEdit();
  const fields = useKeptFields('lead', boat.name);
  const sensors = unitsOf('depth-sensor', 'transducer');
  const units = sensors.length > 0 ? sensors : unitsOf('sounder');
  const unit = chosenUnit(units, fields);
  const [leadM, shownM] = [parseSigned(fields.get('lead')), parseSigned(fields.get('shown'))];
  const offset = fields.get('offset');
  const offsetM = offset === '' ? 0 : parseSigned(offset);
  const { draftM } = boat.hull;
  const isWhole = leadM !== undefined && shownM !== undefined && offsetM !== undefined && leadM >= 0 && shownM >= 0;
  const found = isWhole ? leadLine({ leadM, shownM, offsetM, draftM }) : undefined;
  return (
    <Calculator
      method="lead"
      title={words.lead.title}
      caution={words.lead.caution}
      isWanting={unit === undefined}
      result={
        found === undefined
          ? undefined
          : {
              says: words.lead.result(metres(found.belowWaterM)),
              more: [words.lead.both(metres(found.surfaceM), metres(found.keelM)), words.lead.draft(metres(draftM))],
              isBad: found.belowWaterM < 0,
            }
      }
      onWrite={
        found === undefined || unit === undefined || !isWhole
          ? undefined
          : () => {
              const trial = { ...trialOf('lead', unit.id), unit: unit.id, leadM, shownM, offsetM };
              edit([{ edit: 'note-at-sea', params: { lead: trial } }]);
            }
      }
    >
      <UnitChoice units={units} fields={fields} />
      <BigField label={words.lead.lead} name="lead" fields={fields} hint="4.60" />
      <BigField label={words.lead.shown} name="shown" fields={fields} hint="4.00" />
      <BigField label={words.lead.offset} name="offset" fields={fields} hint="0" />
    </Calculator>
  );
};
