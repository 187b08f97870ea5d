import type { ReactNode } from 'react';
import type { Bank, Panel } from '../../../../../core/boat/supply.ts';
import { parseArea } from '../../../../../core/units/parse-area.ts';
import { answerEdit } from '../../../../../core/walk-round/answer-edits.ts';
import { AnswerOptions, AnswerPick, yesNo } from './answer-options.tsx';
import type { AnswerProps } from './answer-props.ts';
import { ifTyped, typedLength, typedNumber } from './typed-numbers.ts';
import { WalkForm } from './walk-form.tsx';
import { words } from './words.ts';

const chemistries = ['flooded', 'agm', 'gel', 'lifepo4', 'other'] as const satisfies readonly Bank['chemistry'][];
const partedKinds = ['switch', 'relay', 'diode', 'dcdc', 'apart', 'nothing'] as const;
const guardKinds = ['fuse', 'breaker', 'none'] as const;

const BankPlate = ({ bank, what }: { bank: Bank; what: string }): ReactNode => (
  <WalkForm
    question={`bank-plate ${bank.id}`}
    what={what}
    wrong={words.wrongNumber}
    blanks={[
      {
        name: 'chemistry',
        says: words.chemistry,
        first: bank.chemistry,
        choices: chemistries.map((one) => [one, words.chemistries[one]]),
      },
      { name: 'capacity', says: words.capacity, first: String(bank.capacityAh), isNumber: true },
      {
        name: 'cranking',
        says: words.cranking,
        ...(bank.coldCrankingA === undefined ? {} : { first: String(bank.coldCrankingA) }),
        isNumber: true,
      },
    ]}
    read={(typed) => {
      const capacityAh = typedNumber(typed('capacity'));
      const cranking = ifTyped(typed('cranking'), typedNumber);
      const chemistry = chemistries.find((one) => one === typed('chemistry')) ?? bank.chemistry;
      if (capacityAh === undefined || cranking === undefined) return undefined;
      const coldCrankingA = cranking === 'none' ? {} : { coldCrankingA: cranking };
      return [answerEdit({ kind: 'bank-plate', bank: bank.id, chemistry, capacityAh, ...coldCrankingA })];
    }}
  />
);

const BankFuse = ({ bank, what }: { bank: Bank; what: string }): ReactNode => (
  <WalkForm
    question={`bank-fuse ${bank.id}`}
    what={what}
    wrong={words.wrongFuse}
    blanks={[
      {
        name: 'kind',
        says: words.guardKind,
        first: bank.main?.kind ?? 'fuse',
        choices: guardKinds.map((kind) => [kind, words.guard[kind]]),
      },
      {
        name: 'rating',
        says: words.amperes,
        ...(bank.main?.ratingA === undefined ? {} : { first: String(bank.main.ratingA) }),
        isNumber: true,
      },
      {
        name: 'distance',
        says: words.alongWire,
        hint: bank.main?.distance === undefined ? words.orFeet : `${bank.main.distance.valueM} m`,
      },
    ]}
    read={(typed) => {
      const kind = guardKinds.find((one) => one === typed('kind')) ?? 'fuse';
      if (kind === 'none') return [answerEdit({ kind: 'bank-fuse', bank: bank.id, main: { kind } })];
      const ratingA = typedNumber(typed('rating'));
      const distance = ifTyped(typed('distance'), typedLength);
      if (ratingA === undefined || distance === undefined) return undefined;
      // what else is known of it (family, sheath) stays where it is of the same kind
      const before = bank.main?.kind === kind ? bank.main : {};
      const main = { ...before, kind, ratingA, ...(distance === 'none' ? {} : { distance }) };
      return [answerEdit({ kind: 'bank-fuse', bank: bank.id, main })];
    }}
  />
);

const PanelFeeder = ({ panel, what }: { panel: Panel; what: string }): ReactNode => (
  <WalkForm
    question={`panel-feeder ${panel.id}`}
    what={what}
    wrong={words.wrongFeeder}
    blanks={[
      {
        name: 'length',
        says: words.lengthOfFeed,
        hint: panel.feeder === undefined ? words.orFeet : `${panel.feeder.length.valueM} m`,
      },
      {
        name: 'area',
        says: words.wireSize,
        hint: panel.feeder?.areaMm2 === undefined ? words.mm2OrAwg : `${panel.feeder.areaMm2} mm²`,
      },
      {
        name: 'main',
        says: words.mainOfPanel,
        ...(panel.mainA === undefined ? {} : { first: String(panel.mainA) }),
        isNumber: true,
      },
    ]}
    read={(typed) => {
      const length = typed('length') === '' ? panel.feeder?.length : typedLength(typed('length'));
      const area = ifTyped(typed('area'), parseArea);
      const main = ifTyped(typed('main'), typedNumber);
      if (length === undefined || area === undefined || main === undefined) return undefined;
      const areaMm2 = area === 'none' ? panel.feeder?.areaMm2 : area;
      const feeder = { length, ...(areaMm2 === undefined ? {} : { areaMm2 }) };
      return [
        answerEdit({
          kind: 'panel-feeder',
          panel: panel.id,
          feeder,
          ...(main === 'none' ? {} : { mainA: main }),
        }),
      ];
    }}
  />
);

/** What takes the answer to a question about a bank. */
export const BankAnswer = ({ index, question: { kind, about }, what }: AnswerProps): ReactNode => {
  const bank = index.banks.get(about);
  if (bank === undefined) return null;
  switch (kind) {
    case 'bank-plate':
      return <BankPlate bank={bank} what={what} />;
    case 'bank-fuse':
      return <BankFuse bank={bank} what={what} />;
    case 'bank-switch':
      return <AnswerOptions what={what} options={yesNo((has) => ({ kind, bank: about, has }))} />;
    case 'bank-parted':
      return (
        <AnswerOptions what={what} options={partedKinds.map((by) => [words.parted[by], { kind, bank: about, by }])} />
      );
    default:
      return (
        <AnswerPick
          what={what}
          picks={index.boat.places.map(({ id, name }) => [id, name])}
          editsOf={(place) => [answerEdit({ kind: 'negative', place })]}
        />
      );
  }
};

/** What takes the answer to a question about a panel. */
export const PanelAnswer = ({ index, question: { kind, about }, what }: AnswerProps): ReactNode => {
  const panel = index.panels.get(about);
  if (panel === undefined) return null;
  if (kind === 'panel-feeder') return <PanelFeeder panel={panel} what={what} />;
  return (
    <WalkForm
      question={`panel-circuits ${about}`}
      what={what}
      wrong={words.wrongCount}
      blanks={[{ name: 'free', says: words.free, isNumber: true }]}
      read={(typed) => {
        const isCount = /^\d{1,3}$/.test(typed('free')) && Number(typed('free')) <= 200;
        return isCount
          ? [answerEdit({ kind: 'panel-circuits', panel: about, free: Number(typed('free')) })]
          : undefined;
      }}
    />
  );
};
