import type { ReactNode } from 'react';
import { bridgeDatums } from '../../../../../core/facts/bridge-datums.ts';
import { settingFigures } from '../../../../../core/facts/setting-figures.ts';
import { type Bridge, clearanceAt, highestTide } from '../../../../../core/fitting/sea/bridge-clearance.ts';
import { datumWords } from '../../../../../papers/settings-sheet/sea-rows.ts';
import { useEdit } from '../../../edit-context.ts';
import { parseSigned } from '../../../forms/typed-length.ts';
import { BigChoice, BigField, Calculator, type Result } from './calculator.tsx';
import type { SeaProps } from './sea-props.ts';
import { trialOf } from './trial-of.ts';
import { type KeptFields, useKeptFields } from './use-kept-fields.ts';
import { words } from './words.ts';

const metres = (valueM: number): string => `${valueM.toFixed(2).replace('-', '−')} m`;
const datumChoices = bridgeDatums.map((datum) => [datum, datumWords[datum]] as const);

const bridgeOf = (fields: KeptFields, { boat, plan }: SeaProps): Bridge | undefined => {
  const charted = parseSigned(fields.get('charted'));
  const datum = bridgeDatums.find((one) => one === fields.get('datum'));
  const datumAbove = parseSigned(fields.get('above'));
  if (charted === undefined || charted < 0 || datum === undefined || datumAbove === undefined) return undefined;
  const margin = boat.measures?.overheadM ?? settingFigures['overhead-margin'].value;
  return { charted, datum, datumAbove, airDraft: plan.airDraft.mostM, margin };
};

const resultOf = (bridge: Bridge, tideM: number | undefined): Result => {
  const highest = words.bridge.highest(metres(highestTide(bridge) ?? 0), metres(bridge.margin));
  const now = tideM === undefined ? undefined : clearanceAt(bridge, tideM);
  if (now === undefined) return { says: highest, more: [] };
  const air = metres(bridge.airDraft);
  const isBad = now.spare < bridge.margin;
  return {
    says: words.bridge.free(metres(now.clearance)),
    more: [
      now.spare < 0 ? words.bridge.short(metres(-now.spare), air) : words.bridge.spare(metres(now.spare), air),
      highest,
    ],
    isBad,
  };
};

/** What is free under a bridge at a tide, and the highest tide at which she passes. */
export const BridgeCalculator = (given: SeaProps): ReactNode => {
  const edit = useEdit();
  const fields = useKeptFields('bridge', given.boat.name);
  const bridge = bridgeOf(fields, given);
  const name = fields.get('name').trim().slice(0, 120);
  const write = (): void => {
    if (bridge?.datum === undefined) return;
    const of = name
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '');
    const { charted: chartedM, datum, datumAbove: datumAboveM } = bridge;
    const trial = { ...trialOf('bridge', of), name, chartedM, datum, datumAboveM };
    edit([{ edit: 'note-at-sea', params: { bridge: trial } }]);
  };
  return (
    <Calculator
      method="bridge"
      title={words.bridge.title}
      caution={words.bridge.caution}
      result={bridge === undefined ? undefined : resultOf(bridge, parseSigned(fields.get('tide')))}
      missing={fields.get('datum') === '' ? words.bridge.needsDatum : words.notYet}
      onWrite={bridge === undefined || name === '' ? undefined : write}
    >
      <BigField label={words.bridge.name} name="name" fields={fields} isText />
      <BigField label={words.bridge.charted} name="charted" fields={fields} hint="17" />
      <BigChoice
        label={words.bridge.datum}
        name="datum"
        fields={fields}
        choices={datumChoices}
        none={words.bridge.askDatum}
      />
      <BigField label={words.bridge.above} name="above" fields={fields} hint="5.60" />
      <BigField label={words.bridge.tide} name="tide" fields={fields} hint="1.80" />
    </Calculator>
  );
};
